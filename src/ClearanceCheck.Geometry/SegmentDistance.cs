namespace ClearanceCheck.Geometry;

/// <summary>Nearest points of segments. Millimetres.</summary>
public static class SegmentDistance
{
    // Square of the sine of the angle between two segments, below which rounding of the plain determinant shows in the distance.
    private const double NearlyParallel = 1e-6;

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
    /// a s - b t = -c and -b s + e t = f, with a = u.u, b = u.v, e = v.v, c = u.r, f = v.r. The determinant a e - b b is that
    /// minimum's s (clamped), after which each parameter in turn is the best for the other, clamped. For nearly parallel segments the
    /// determinant as a difference is mostly rounding: there it is taken as |u x v|^2, whose error grows with one over the angle and
    /// not with its square, and t, s and t are projected onto each other once more: 1e-12 mm, in the tests, at any angle.
    /// Zero lengths divide by a tiny number instead of zero, with a numerator that is exactly zero.
    /// </remarks>
    public static (double S, double T) Nearest(Vector3d r, Vector3d u, Vector3d v)
    {
        const double Tiny = 1e-300;
        double a = u.LengthSquared, e = v.LengthSquared, b = Vector3d.Dot(u, v);
        double c = Vector3d.Dot(u, r), f = Vector3d.Dot(v, r);
        double determinant = (a * e) - (b * b);
        double s = determinant > NearlyParallel * (a * e) ? Math.Clamp(((b * f) - (c * e)) / determinant, 0, 1) : AlongNearlyParallel(r, u, v);
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
