namespace ClearanceCheck.Geometry;

/// <summary>Nearest points of segments. Millimetres.</summary>
public static class SegmentDistance
{
    // The squared sine below which too many digits of a determinant are lost.
    private const double NearlyParallelShare = 1e-2;

    /// <summary>Distance of a point from a segment, which may have no length.</summary>
    public static double FromPoint(Vector3d point, Vector3d from, Vector3d to)
    {
        Vector3d u = to - from, w = point - from;
        double uu = u.LengthSquared;
        double s = uu > 0 ? Math.Clamp(Vector3d.Dot(w, u) / uu, 0, 1) : 0;
        return (w - (u * s)).Length;
    }

    /// <summary>Parameters (0 to 1) of the nearest points of the segments p + s u and q + t v.</summary>
    /// <remarks>
    /// The squared distance is a convex quadratic in (s, t) on the unit square. With r = p - q its gradient vanishes where
    /// a s - b t = -c and -b s + e t = f, with a = u.u, b = u.v, e = v.v, c = u.r, f = v.r. Dividing by the determinant a e - b b gives that
    /// minimum's s (clamped), after which each parameter in turn is the best for the other, clamped. For nearly parallel segments the
    /// determinant is mostly rounding, and a slip along segments that all but touch costs its length times the angle: 5e-8 mm, on the
    /// side of a gap too large, was measured at 1e-8. There s comes from |u x v|^2, which is the same number without the difference. For
    /// parallel segments any s will do: the valley is flat, and projecting t, s and t once more onto each other lands in it. So 1e-12 mm
    /// at any angle, measured in the tests.
    /// Zero lengths divide by a tiny number instead of zero, with a numerator that is exactly zero.
    /// </remarks>
    public static (double S, double T) Nearest(Vector3d r, Vector3d u, Vector3d v)
    {
        const double Tiny = 1e-300;
        double a = u.LengthSquared, e = v.LengthSquared, b = Vector3d.Dot(u, v);
        double c = Vector3d.Dot(u, r), f = Vector3d.Dot(v, r);
        double determinant = (a * e) - (b * b);
        double s = determinant > NearlyParallelShare * a * e ? Math.Clamp(((b * f) - (c * e)) / determinant, 0, 1) : AlongNearlyParallel(r, u, v);
        double t = Math.Clamp(((b * s) + f) / Math.Max(e, Tiny), 0, 1);
        s = Math.Clamp(((b * t) - c) / Math.Max(a, Tiny), 0, 1);
        t = Math.Clamp(((b * s) + f) / Math.Max(e, Tiny), 0, 1);
        return (s, t);
    }

    private static double AlongNearlyParallel(Vector3d r, Vector3d u, Vector3d v)
    {
        Vector3d normal = Vector3d.Cross(u, v);
        double squared = normal.LengthSquared;
        return squared > 0 ? Math.Clamp(Vector3d.Dot(Vector3d.Cross(v, r), normal) / squared, 0, 1) : 0;
    }
}
