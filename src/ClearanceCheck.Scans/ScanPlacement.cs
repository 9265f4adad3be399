using System.Runtime.InteropServices;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans;

/// <summary>Turns a mesh from its file's axes and unit into the vehicle frame in millimetres.</summary>
internal static class ScanPlacement
{
    // Twelve inches, rounded once.
    private const double MillimetresPerFoot = 304.8;

    /// <summary>The scan; null, and said, where a point lies out of range.</summary>
    public static Scan? Place(ScanFile file, MeshBuilder mesh)
    {
        double unit = MillimetresIn(file.Claims.Unit);
        Vector3d forward = file.Claims.Forward.Direction(), up = file.Claims.Up.Direction();
        // y = z x x: the vehicle frame is right-handed, and so are the files of all three formats.
        Vector3d left = Vector3d.Cross(up, forward);
        var points = new Vector3d[mesh.Points.Length];
        for (int i = 0; i < points.Length; i++)
        {
            Vector3d p = mesh.Points[i];
            Vector3d turned = new Vector3d(Vector3d.Dot(forward, p), Vector3d.Dot(left, p), Vector3d.Dot(up, p)) * unit;
            points[i] = turned + file.Claims.Shift;
            // Also from the file's own zero: numbers of 32 bits, as most files have, are in steps of 0.06 mm at a kilometre.
            bool nearItsOwn = IsNear(turned);
            if (nearItsOwn && IsNear(points[i])) continue;
            ScanMessages.OutOfRange(file, p, nearItsOwn);
            return null;
        }

        return new Scan(file.Name, ImmutableCollectionsMarshal.AsImmutableArray(points), [.. mesh.Corners]);
    }

    private static bool IsNear(Vector3d p) => Math.Max(Math.Abs(p.X), Math.Max(Math.Abs(p.Y), Math.Abs(p.Z))) <= ScanLimits.FarthestMm;

    /// <summary>Millimetres in one of a unit.</summary>
    public static double MillimetresIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => 1,
        LengthUnit.Centimetre => 10,
        LengthUnit.Metre => 1000,
        LengthUnit.Inch => Length.MillimetresPerInch,
        LengthUnit.Foot => MillimetresPerFoot,
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };
}
