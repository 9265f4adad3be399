namespace ClearanceCheck.Inspecting.Tests.Oracle;

/// <summary>
/// The fixture's three planted places by brute force: every pose of a grid that the stops allow, refined around the worst, segment
/// distances by sampling one segment and projecting on the other. Shares no code with the engine; figures from the fixture's files.
/// </summary>
internal static class IndependentInspection
{
    // Shocks 305 to 520 mm with 3 mm of bushing at each end; stops 75 mm high that crush by half.
    private const double Longest = 520 + 6;
    private const double Shortest = 305 - 6;
    private const double LeastPad = 37.5;

    private static readonly double[][] ShockUpper = [[-700, 400, 60], [-700, -400, 60]];
    private static readonly double[][] ShockLower = [[-660, 470, -455], [-660, -470, -457]];
    private static readonly double[][] StopSeat = [[-600, 455, -118], [-600, -455, -118]];
    private static readonly double[][] StopPad = [[-606, 455, -345], [-606, -455, -347]];

    public static double[][] Tailpipe { get; } = [[260, -250, -210], [-180, -330, -190], [-380, -500, -120], [-560, -532, -82], [-760, -528, -88], [-980, -500, -160]];

    public static double[][] AxleLine { get; } = [[-566, 148, -366], [-590, 60, -356], [-592, -120, -352], [-592, -470, -350], [-600, -622, -354]];

    public static double[][] FrameLine { get; } = [[310, 396, -64], [-250, 396, -66], [-420, 340, -96], [-600, 300, -172], [-598, 180, -178], [-486, 118, -112]];

    public static double[][] AxleTube { get; } = [[-612, 660, -402], [-612, -660, -404]];

    private const double LineRadius = 25.4 * 3 / 32;

    /// <summary>Least gap of the axle's brake line to the tailpipe.</summary>
    public static (double Value, double Left, double Right) AxleLineToTailpipe() =>
        Least(axle => Chains(Tailpipe, [.. AxleLine.Select(axle.Place)]) - LineRadius - (25.4 * 1.25));

    /// <summary>Least gap of the frame's brake line to the axle tube.</summary>
    public static (double Value, double Left, double Right) FrameLineToTube() =>
        Least(axle => Chains(FrameLine, [.. AxleTube.Select(axle.Place)]) - LineRadius - (25.4 * 1.5));

    /// <summary>Least slack of the hose, percent.</summary>
    public static (double Value, double Left, double Right) HoseSlack(double freeLength) =>
        Least(axle => 100 * ((freeLength / IndependentAxle.Distance([-482, 112, -120], axle.Place([-560, 150, -372]))) - 1));

    private static (double Value, double Left, double Right) Least(Func<IndependentAxle, double> value)
    {
        (double Value, double Left, double Right) best = (double.PositiveInfinity, 0, 0);
        double step = 5, span = 185;
        for (double centreLeft = 0, centreRight = 0; step > 0.01; step /= 4, span = step * 8)
        {
            for (double left = centreLeft - span; left <= centreLeft + span; left += step)
            {
                var axle = new IndependentAxle();
                for (double right = centreRight - span; right <= centreRight + span; right += step)
                {
                    if (left is < -180 or > 160 || right is < -180 or > 160) continue;
                    if (!axle.Solve(left, right)) axle = new IndependentAxle();
                    else if (IsAllowed(axle) && value(axle) is var found && found < best.Value) best = (found, left, right);
                }
            }

            (centreLeft, centreRight) = (best.Left, best.Right);
        }

        return best;
    }

    private static bool IsAllowed(IndependentAxle axle)
    {
        for (int side = 0; side < 2; side++)
        {
            double shock = IndependentAxle.Distance(ShockUpper[side], axle.Place(ShockLower[side]));
            if (shock is > Longest or < Shortest) return false;
            if (StopSeat[side][2] - axle.Place(StopPad[side])[2] < LeastPad) return false;
        }

        return true;
    }

    private static double Chains(double[][] a, double[][] b)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i + 1 < a.Length; i++)
            for (int j = 0; j + 1 < b.Length; j++) least = Math.Min(least, Segments(a[i], a[i + 1], b[j], b[j + 1]));
        return least;
    }

    // The distance from a point of one segment to the other segment is convex along the first: search it by thirds.
    private static double Segments(double[] a, double[] b, double[] c, double[] d)
    {
        double low = 0, high = 1;
        for (int round = 0; round < 45; round++)
        {
            double third = (high - low) / 3;
            if (ToSegment(Along(a, b, low + third), c, d) < ToSegment(Along(a, b, high - third), c, d)) high -= third;
            else low += third;
        }

        return ToSegment(Along(a, b, (low + high) / 2), c, d);
    }

    private static double ToSegment(double[] p, double[] c, double[] d)
    {
        double[] v = [d[0] - c[0], d[1] - c[1], d[2] - c[2]];
        double share = (((p[0] - c[0]) * v[0]) + ((p[1] - c[1]) * v[1]) + ((p[2] - c[2]) * v[2])) / ((v[0] * v[0]) + (v[1] * v[1]) + (v[2] * v[2]));
        return IndependentAxle.Distance(p, Along(c, d, Math.Clamp(share, 0, 1)));
    }

    private static double[] Along(double[] a, double[] b, double t) => [a[0] + ((b[0] - a[0]) * t), a[1] + ((b[1] - a[1]) * t), a[2] + ((b[2] - a[2]) * t)];
}
