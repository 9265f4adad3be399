namespace ClearanceCheck.Units;

/// <summary>The guard that keeps not-a-number and infinity out of every quantity.</summary>
internal static class Finite
{
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static double OrThrow(double value, string name) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, "A quantity must be a finite number.");
}
