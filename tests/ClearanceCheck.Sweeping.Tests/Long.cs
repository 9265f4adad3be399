namespace ClearanceCheck.Sweeping.Tests;

/// <summary>How many random cases: a few hundred each time, many times that when CLEARANCECHECK_LONG is 1.</summary>
internal static class Long
{
    public static int Times(int count) => Environment.GetEnvironmentVariable("CLEARANCECHECK_LONG") == "1" ? 20 * count : count;
}
