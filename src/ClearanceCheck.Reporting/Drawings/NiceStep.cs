namespace ClearanceCheck.Reporting.Drawings;

/// <summary>Round numbers for bars and ticks: 1, 2 or 5 times a power of ten.</summary>
internal static class NiceStep
{
    /// <summary>The largest such number that is not above a positive value.</summary>
    public static double AtMost(double value)
    {
        double power = 1;
        while (power * 10 <= value) power *= 10;
        while (power > value && power > 1e-9) power /= 10;
        return 5 * power <= value ? 5 * power : 2 * power <= value ? 2 * power : power;
    }

    /// <summary>The smallest such number that is not below a positive value.</summary>
    public static double AtLeast(double value)
    {
        double below = AtMost(value);
        if (below >= value) return below;
        return AtMost(below * 2.5000001);
    }
}
