using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>A linear map and a shift, in the file's unit.</summary>
/// <param name="X">Where the map takes the first unit vector.</param>
/// <param name="Y">Where it takes the second.</param>
/// <param name="Z">Where it takes the third.</param>
/// <param name="Shift">Where the whole takes zero.</param>
internal sealed record AffineTransform(Vector3d X, Vector3d Y, Vector3d Z, Vector3d Shift)
{
    public static AffineTransform None { get; } = new(Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ, Vector3d.Zero);

    /// <summary>From the sixteen numbers of a matrix, column after column.</summary>
    public static AffineTransform FromColumns(double[] m) =>
        new(new Vector3d(m[0], m[1], m[2]), new Vector3d(m[4], m[5], m[6]), new Vector3d(m[8], m[9], m[10]), new Vector3d(m[12], m[13], m[14]));

    /// <summary>Scaled along the axes, then turned by a unit quaternion (x, y, z, w), then shifted.</summary>
    public static AffineTransform FromParts(double[] shift, double[] q, double[] scale)
    {
        double size = Math.Sqrt((q[0] * q[0]) + (q[1] * q[1]) + (q[2] * q[2]) + (q[3] * q[3]));
        var axis = new Vector3d(q[0] / size, q[1] / size, q[2] / size);
        double w = q[3] / size;
        return new(
            Turned(axis, w, Vector3d.UnitX) * scale[0], Turned(axis, w, Vector3d.UnitY) * scale[1], Turned(axis, w, Vector3d.UnitZ) * scale[2], new Vector3d(shift[0], shift[1], shift[2]));
    }

    public Vector3d Apply(Vector3d point) => Linear(point) + Shift;

    /// <summary>First the inner map, then this one.</summary>
    public AffineTransform After(AffineTransform inner) => new(Linear(inner.X), Linear(inner.Y), Linear(inner.Z), Apply(inner.Shift));

    private static Vector3d Turned(Vector3d axis, double w, Vector3d v)
    {
        Vector3d twice = 2 * Vector3d.Cross(axis, v);
        return v + (w * twice) + Vector3d.Cross(axis, twice);
    }

    private Vector3d Linear(Vector3d v) => (X * v.X) + (Y * v.Y) + (Z * v.Z);
}
