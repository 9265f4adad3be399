using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>What every measured gap has to keep.</summary>
internal static class GapAssert
{
    /// <summary>Least n.x of the first less largest n.x of the second capsule, taken from one point near both.</summary>
    public static double Separation(in Capsule first, in Capsule second, Vector3d n)
    {
        Vector3d origin = first.From;
        Capsule a = Shifted(first, origin), b = Shifted(second, origin);
        return -a.Support(-n) - b.Support(n);
    }

    public static double Separation(Disc first, in Capsule second, Vector3d n) => -first.Support(-n) - second.Support(n);

    public static double OffSurface(in Capsule capsule, Vector3d point) =>
        Math.Abs(SegmentDistance.FromPoint(point, capsule.From, capsule.To) - capsule.Radius);

    public static double OffSurface(Disc disc, Vector3d point)
    {
        Vector3d from = point - disc.Center;
        double z = Vector3d.Dot(from, disc.Axis);
        double aside = (from - (disc.Axis * z)).Length - disc.RadiusMm, beyond = Math.Abs(z) - disc.HalfWidthMm;
        return aside > 0 && beyond > 0 ? Math.Sqrt((aside * aside) + (beyond * beyond)) : Math.Abs(Math.Max(aside, beyond));
    }

    /// <summary>The witnesses stand the reported gap apart, and the line between them runs along the direction.</summary>
    public static void WitnessesAgree(in PieceGap gap, double tolerance)
    {
        gap.Direction.Length.ShouldBe(1, 1e-14);
        ((gap.OnFirst - gap.OnSecond) - (gap.Direction * gap.Gap)).Length.ShouldBeLessThan(tolerance);
    }

    public static void Near(Vector3d actual, Vector3d expected, double tolerance) => (actual - expected).Length.ShouldBeLessThan(tolerance);

    private static Capsule Shifted(in Capsule capsule, Vector3d origin) => capsule with { From = capsule.From - origin, To = capsule.To - origin };
}
