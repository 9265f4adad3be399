namespace ClearanceCheck.Geometry.Tests.Oracle;

/// <summary>A plain solid cylinder with sharp edges: the coarsest picture of a tire. Body coordinates, mm.</summary>
internal sealed class Disc
{
    /// <exception cref="ArgumentException">An axis without length, or a size that is negative or not finite.</exception>
    public Disc(Vector3d center, Vector3d axis, double radiusMm, double halfWidthMm)
    {
        if (!(axis.LengthSquared > 0) || !axis.IsFinite || !center.IsFinite) throw new ArgumentException("The disc needs a finite centre and an axis.", nameof(axis));
        if (!(radiusMm >= 0) || !(halfWidthMm >= 0) || !double.IsFinite(radiusMm + halfWidthMm)) throw new ArgumentException("The disc's sizes must be zero or more.", nameof(radiusMm));
        (Center, Axis, RadiusMm, HalfWidthMm) = (center, axis.NormalizedOr(Vector3d.UnitZ), radiusMm, halfWidthMm);
    }

    public Vector3d Center { get; }

    /// <summary>Unit vector along the cylinder's axis.</summary>
    public Vector3d Axis { get; }

    public double RadiusMm { get; }

    public double HalfWidthMm { get; }

    public double Support(Vector3d direction)
    {
        double along = Vector3d.Dot(direction, Axis);
        // Not sqrt(1 - along^2): beside the axis that loses half of the digits, which times the radius is 1e-5 mm.
        double across = (direction - (Axis * along)).Length;
        return Vector3d.Dot(direction, Center) + (HalfWidthMm * Math.Abs(along)) + (RadiusMm * across);
    }
}
