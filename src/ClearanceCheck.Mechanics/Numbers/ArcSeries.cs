namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>The arc tangent by its series, in any kind of number, as functions of the square of the tangent.</summary>
/// <remarks>
/// atan(x) / x = 1 - s / 3 + s^2 / 5 - ..., s = x^2 (J. Gregory's series; textbook, from memory). With s up to <see cref="Limit"/>, that is
/// angles up to 32 degrees, or turns up to 64 degrees by their Cayley vector, what the last term leaves is below rounding. Intervals count it
/// as s^<see cref="Terms"/> times a number whose size and derivatives are at most <see cref="RestBound"/>: an alternating series of falling terms
/// starts at 1 / (2 n + 3), and the sums of k s^(k-1) and k (k-1) s^(k-2) for s up to 0.4 are below 3 and 10.
/// </remarks>
internal static class ArcSeries
{
    public const double Limit = 0.4;
    private const int Terms = 44;
    private const double RestBound = 10.0 / ((2 * Terms) + 3);

    /// <summary>(1 - atan(x) / x) / x^2, from x^2.</summary>
    public static T Bow<T>(T square)
        where T : unmanaged, IReal<T>
    {
        T sum = T.Rest(square, Limit, RestBound);
        for (int k = Terms - 1; k >= 0; k--) sum = (T.From(1) / T.From((2 * k) + 3)) - (square * sum);
        return sum;
    }

    /// <summary>atan(x) / x, from x^2: half an angle over its tangent.</summary>
    public static T Ratio<T>(T square)
        where T : unmanaged, IReal<T> => T.From(1) - (square * Bow(square));
}
