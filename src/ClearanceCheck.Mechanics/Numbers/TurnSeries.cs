namespace ClearanceCheck.Mechanics.Numbers;

/// <summary>Sine and cosine by their power series, in any kind of number, as functions of the square of the angle.</summary>
/// <remarks>
/// sin(p) / p = 1 - s / 3! + s^2 / 5! - ... and (1 - cos(p)) / p^2 = 1 / 2! - s / 4! + ..., s = p^2 (textbook, from memory). With s up to
/// <see cref="Limit"/> the first term that is left out, and its first two derivatives, are below <see cref="RestBound"/>; so is their alternating sum.
/// </remarks>
internal static class TurnSeries
{
    /// <summary>The largest square of an angle, rad^2: 51 degrees.</summary>
    public const double Limit = 0.8;
    private const int Terms = 12;
    private const double RestBound = 1e-20;

    /// <summary>sin(p) / p.</summary>
    public static T Sine<T>(T square)
        where T : unmanaged, IReal<T> => Series(square, 1);

    /// <summary>(1 - cos(p)) / p^2.</summary>
    public static T Rise<T>(T square)
        where T : unmanaged, IReal<T> => Series(square, 2) * T.From(0.5);

    // 1 - s / ((n + 1) (n + 2)) (1 - s / ((n + 3) (n + 4)) (...)).
    private static T Series<T>(T square, int n)
        where T : unmanaged, IReal<T>
    {
        T sum = T.From(1) + T.Rest(square, Limit, RestBound);
        for (int k = Terms; k >= 1; k--)
        {
            int last = n + (2 * k);
            sum = T.From(1) - (square * sum / T.From((last - 1) * last));
        }

        return sum;
    }
}
