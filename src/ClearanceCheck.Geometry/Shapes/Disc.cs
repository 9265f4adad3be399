namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A plain solid cylinder with sharp edges: the coarsest picture of a tire. Body coordinates, mm.</summary>
public sealed class Disc : Solid
{
    private readonly Vector3d[] anchors;

    /// <exception cref="ArgumentException">An axis without length, or a size that is negative or not finite.</exception>
    public Disc(Vector3d center, Vector3d axis, double radiusMm, double halfWidthMm)
    {
        if (!(axis.LengthSquared > 0) || !axis.IsFinite || !center.IsFinite) throw new ArgumentException("The disc needs a finite centre and an axis.", nameof(axis));
        if (!(radiusMm >= 0) || !(halfWidthMm >= 0) || !double.IsFinite(radiusMm + halfWidthMm)) throw new ArgumentException("The disc's sizes must be zero or more.", nameof(radiusMm));
        (Center, Axis, RadiusMm, HalfWidthMm) = (center, axis.NormalizedOr(Vector3d.UnitZ), radiusMm, halfWidthMm);
        anchors = Box();
    }

    public Vector3d Center { get; }

    /// <summary>Unit vector along the cylinder's axis.</summary>
    public Vector3d Axis { get; }

    public double RadiusMm { get; }

    public double HalfWidthMm { get; }

    public override int NodeCount => 1;

    public override ReadOnlySpan<Vector3d> Anchors => anchors;

    public override int Left(int node) => -1;

    public override int Right(int node) => -1;

    public override double Thickness(int node) => 0;

    public override double Support(int node, Vector3d direction)
    {
        double along = Vector3d.Dot(direction, Axis);
        // Not sqrt(1 - along^2): beside the axis that loses half of the digits, which times the radius is 1e-5 mm.
        double across = (direction - (Axis * along)).Length;
        return Vector3d.Dot(direction, Center) + (HalfWidthMm * Math.Abs(along)) + (RadiusMm * across);
    }

    // The corners of the box about the disc: its hull contains the disc.
    private Vector3d[] Box()
    {
        Vector3d e = Axis.AnyPerpendicular(), f = Vector3d.Cross(Axis, e);
        var corners = new Vector3d[8];
        for (int i = 0; i < 8; i++)
            corners[i] = Center + (Axis * ((i & 1) == 0 ? -HalfWidthMm : HalfWidthMm)) + (e * ((i & 2) == 0 ? -RadiusMm : RadiusMm)) + (f * ((i & 4) == 0 ? -RadiusMm : RadiusMm));
        return corners;
    }
}
