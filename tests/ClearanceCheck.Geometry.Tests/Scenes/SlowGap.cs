using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>Gaps the slow and obvious way, in 31-digit numbers.</summary>
internal static class SlowGap
{
    /// <summary>Every pair of features by itself: four ends against the other segment, and the common normal of the two lines.</summary>
    public static double Capsules(in Capsule a, in Capsule b)
    {
        PreciseVector p = a.From, q = b.From;
        PreciseVector u = (PreciseVector)a.To - p, v = (PreciseVector)b.To - q;
        DoubleDouble least = DoubleDouble.Min(
            DoubleDouble.Min(PointSegment(p, q, v), PointSegment(p + u, q, v)),
            DoubleDouble.Min(PointSegment(q, p, u), PointSegment(q + v, p, u)));
        PreciseVector n = PreciseVector.Cross(u, v), r = q - p;
        DoubleDouble nn = n.LengthSquared;
        if (nn > 0.0)
        {
            DoubleDouble s = PreciseVector.Dot(PreciseVector.Cross(r, v), n) / nn, t = PreciseVector.Dot(PreciseVector.Cross(r, u), n) / nn;
            DoubleDouble height = PreciseVector.Dot(r, n);
            if (s >= 0.0 && s <= 1.0 && t >= 0.0 && t <= 1.0) least = DoubleDouble.Min(least, height * height / nn);
        }

        return (DoubleDouble.Sqrt(least) - a.Radius - b.Radius).ToDouble();
    }

    /// <summary>The distance from a cylinder is convex along a line: its derivative, from the nearest point of the cylinder, is bisected.</summary>
    public static double DiscCapsule(Vector3d center, Vector3d axis, double radius, double halfWidth, in Capsule capsule)
    {
        PreciseVector a = axis;
        a *= 1.0 / DoubleDouble.Sqrt(a.LengthSquared);
        PreciseVector from = (PreciseVector)capsule.From - center, along = (PreciseVector)capsule.To - capsule.From;
        DoubleDouble low = 0.0, high = 1.0;
        for (int i = 0; i < 70; i++)
        {
            DoubleDouble t = (low + high) * 0.5;
            PreciseVector x = from + (along * t);
            if (PreciseVector.Dot(along, x - OnCylinder(x, a, radius, halfWidth)) > 0.0) high = t;
            else low = t;
        }

        DoubleDouble least = 1e300;
        foreach (DoubleDouble t in (ReadOnlySpan<DoubleDouble>)[0.0, low, 1.0])
        {
            PreciseVector x = from + (along * t);
            least = DoubleDouble.Min(least, (x - OnCylinder(x, a, radius, halfWidth)).LengthSquared);
        }

        return (DoubleDouble.Sqrt(least) - capsule.Radius).ToDouble();
    }

    private static PreciseVector OnCylinder(PreciseVector x, PreciseVector axis, DoubleDouble radius, DoubleDouble halfWidth)
    {
        DoubleDouble z = PreciseVector.Dot(x, axis);
        PreciseVector across = x - (axis * z);
        DoubleDouble rho = DoubleDouble.Sqrt(across.LengthSquared);
        if (rho > radius) across *= radius / rho;
        DoubleDouble held = z > halfWidth ? halfWidth : z < -halfWidth ? -halfWidth : z;
        return across + (axis * held);
    }

    private static DoubleDouble PointSegment(PreciseVector x, PreciseVector from, PreciseVector along)
    {
        DoubleDouble dd = along.LengthSquared;
        DoubleDouble k = dd > 0.0 ? DoubleDouble.Clamp01(PreciseVector.Dot(x - from, along) / dd) : 0.0;
        return (x - from - (along * k)).LengthSquared;
    }
}
