using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>Convex pieces of simple bodies whose sizes and places are known in closed form. Vehicle frame, mm.</summary>
internal static class SampleShapes
{
    public const double TireRadius = 440;
    public const double TireHalfWidth = 130;

    /// <summary>The top third of a tire with its axle along y: staves of ten degrees, its highest point straight over the centre.</summary>
    public static DrawnPart Tire(Vector3d centre) => new("tire", [], 0, false)
    {
        Pieces = [.. Enumerable.Range(-6, 12).Select(i => new DrawnPiece([.. Section(centre, i * 10), .. Section(centre, (i + 1) * 10)], 0))],
    };

    /// <summary>A level plate of two triangles, 3 mm thick, with its lower side at a height.</summary>
    public static DrawnPart Plate(Vector3d middle, double halfX, double halfY)
    {
        Vector3d At(double x, double y) => middle + new Vector3d(x, y, 1.5);
        (Vector3d a, Vector3d b, Vector3d c, Vector3d d) = (At(-halfX, -halfY), At(halfX, -halfY), At(halfX, halfY), At(-halfX, halfY));
        return new DrawnPart("plate", [], 0, false) { Pieces = [new DrawnPiece([a, b, c], 1.5), new DrawnPiece([a, c, d], 1.5)] };
    }

    /// <summary>A box by its eight corners, bit k of a corner's number telling on which side along edge k it lies.</summary>
    public static DrawnPart Box(Vector3d corner, Vector3d x, Vector3d y, Vector3d z) => new("box", [], 0, false)
    {
        Pieces = [new DrawnPiece([.. Enumerable.Range(0, 8).Select(i => corner + (x * (i & 1)) + (y * ((i >> 1) & 1)) + (z * (i >> 2)))], 0)],
    };

    /// <summary>A lump as a scan gives it: a ball of triangles with a point of its surface straight below its centre.</summary>
    public static DrawnPart Lump(Vector3d centre, double radius)
    {
        const int rings = 8, around = 16;
        Vector3d At(int ring, int turn)
        {
            double up = Math.PI * ring / rings, about = 2 * Math.PI * turn / around;
            return centre + (new Vector3d(Math.Sin(up) * Math.Cos(about), Math.Sin(up) * Math.Sin(about), -Math.Cos(up)) * radius);
        }

        var pieces = ImmutableArray.CreateBuilder<DrawnPiece>();
        for (int ring = 0; ring < rings; ring++)
            for (int turn = 0; turn < around; turn++)
            {
                if (ring > 0) pieces.Add(new DrawnPiece([At(ring, turn), At(ring, turn + 1), At(ring + 1, turn)], 0));
                if (ring < rings - 1) pieces.Add(new DrawnPiece([At(ring, turn + 1), At(ring + 1, turn + 1), At(ring + 1, turn)], 0));
            }

        return new DrawnPart("lump", [], 0, false) { Pieces = pieces.ToImmutable() };
    }

    private static IEnumerable<Vector3d> Section(Vector3d centre, double degreesFromTop)
    {
        double angle = degreesFromTop * Math.PI / 180;
        var outward = new Vector3d(Math.Sin(angle), 0, Math.Cos(angle));
        foreach ((double across, double radius) in new[] { (-120.0, 240.0), (-130, 380), (-105, 440), (105, 440), (130, 380), (120, 240) })
            yield return centre + (outward * radius) + (Vector3d.UnitY * across);
    }
}
