using System.Globalization;

namespace ClearanceCheck.Benchmarks;

/// <summary>What one run of a program took.</summary>
/// <param name="ReadMs">From the file to triangles, ms.</param>
/// <param name="BuildMs">From triangles to a tree, ms.</param>
/// <param name="QueryNs">For one closest point, ns.</param>
/// <param name="PeakMb">Most memory held at a time, MB of 2^20 bytes.</param>
internal sealed record Figures(double ReadMs, double BuildMs, double QueryNs, double PeakMb)
{
    /// <summary>Reads the line that both programs print.</summary>
    public static Figures Parse(string line)
    {
        double[] numbers = [.. line.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        return new Figures(numbers[0], numbers[1], numbers[2], numbers[3]);
    }

    /// <summary>The middle one of each figure.</summary>
    public static Figures Median(IReadOnlyCollection<Figures> runs) => new(
        Middle(runs.Select(r => r.ReadMs)), Middle(runs.Select(r => r.BuildMs)), Middle(runs.Select(r => r.QueryNs)), Middle(runs.Select(r => r.PeakMb)));

    public static double Middle(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    public string ToLine() => string.Create(CultureInfo.InvariantCulture, $"{ReadMs:R} {BuildMs:R} {QueryNs:R} {PeakMb:R}");
}
