using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The signed gap of two convex pieces: one function for all pairs of shapes and on both sides of zero.</summary>
/// <remarks>
/// The gap is the largest separation along any direction n, (least n.x over the first) - (largest n.x over the second), radii taken off:
/// the distance of the corners' hulls while these are apart, minus the depth of their overlap where they meet. Two chains' capsules have
/// a closed form (<see cref="CapsuleCapsule"/>), points, segments and triangles another (<see cref="SimplexDistance"/>), all other pairs
/// are searched (<see cref="PolytopeDistance"/>), and a search that stopped short gives way to a proved separation; hulls that touch or overlap are separated most along one of finitely many axes
/// (<see cref="SeparatingAxes"/>). Error below 1e-11 mm for the closed forms and below 1e-9 mm for the rest, for parts within some metres;
/// where edges or faces are parallel but for 1e-9 to 1e-6 the rest may be up to 1e-8 mm too small, never that much too large.
/// </remarks>
public static class SignedGap
{
    // Hulls nearer than this, mm: the difference of two points no longer says well enough in which direction they lie apart.
    private const double NearMm = 1e-4;

    // Below this distance, mm, the search can't tell apart from touching.
    private const double TouchMm = 1e-10;

    // What rounding leaves of the separation of flat pieces in one plane, mm: more than this below zero is an overlap.
    private const double OverlapMm = 1e-11;

    // By how much the search may stop short where faces are nearly parallel, mm: a proved separation that near is the better answer.
    private const double UnprovedMm = 1e-6;

    // A search whose direction separates by this much less than its distance has stopped short, mm.
    private const double ProofMm = 1e-9;

    /// <summary>The gap of two pieces in one frame.</summary>
    public static PieceGap Measure(in Piece first, in Piece second) => Measure(first, second, exactDepth: true);

    /// <summary>The gap of two pieces in one frame.</summary>
    /// <param name="first">A piece.</param>
    /// <param name="second">Another.</param>
    /// <param name="exactDepth">False where a lower bound is enough once the hulls overlap, as for pieces that only hold others.</param>
    public static PieceGap Measure(in Piece first, in Piece second, bool exactDepth)
    {
        if (!IsNumber(first) || !IsNumber(second)) return new PieceGap(double.NaN, Vector3d.UnitZ, first.Corners[0], second.Corners[0]);
        if (first.Corners.Length <= 2 && second.Corners.Length <= 2) return CapsuleCapsule.Measure(Capsule(first), Capsule(second));
        bool closedForm = first.Corners.Length <= 3 && second.Corners.Length <= 3;
        (Vector3d onFirst, Vector3d onSecond) = closedForm
            ? SimplexDistance.Nearest(first.Corners, second.Corners)
            : PolytopeDistance.Nearest(first.Corners, second.Corners);
        Vector3d apart = onFirst - onSecond;
        double distance = apart.Length;
        if (distance > NearMm && (closedForm || IsProved(first, second, apart / distance, distance))) return Witnessed(first, second, distance, apart / distance, onFirst, onSecond);
        (double separation, Vector3d n) = SeparatingAxes.Best(first, second, exactDepth, apart);
        double core = Core(distance, separation, exactDepth, closedForm);
        if (core >= 0) return Witnessed(first, second, core, n, onFirst, onSecond);
        Vector3d deepest = Deepest(first.Corners, n);
        return Witnessed(first, second, core, n, deepest, deepest - (n * core));
    }

    // Touching, overlapping, or so near that the pieces' own faces and edges know better than the difference of two points.
    private static double Core(double distance, double separation, bool exactDepth, bool closedForm)
    {
        bool overlaps = exactDepth && separation < -OverlapMm;
        bool isProved = !closedForm && (distance > NearMm || separation > distance - UnprovedMm);
        return overlaps || isProved || distance <= TouchMm ? separation : Math.Max(distance, separation);
    }

    private static bool IsProved(in Piece first, in Piece second, Vector3d n, double distance)
    {
        Vector3d origin = first.Corners[0];
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (ref readonly Vector3d corner in first.Corners) low = Math.Min(low, Vector3d.Dot(n, corner - origin));
        foreach (ref readonly Vector3d corner in second.Corners) high = Math.Max(high, Vector3d.Dot(n, corner - origin));
        return low - high >= distance - ProofMm;
    }

    private static PieceGap Witnessed(in Piece first, in Piece second, double core, Vector3d n, Vector3d onFirst, Vector3d onSecond) => new(
        core - first.Radius - second.Radius, n, onFirst - (n * first.Radius), onSecond + (n * second.Radius));

    // The middle of the feature that lies deepest.
    private static Vector3d Deepest(ReadOnlySpan<Vector3d> corners, Vector3d n)
    {
        const double SameMm = 1e-6;
        double least = double.PositiveInfinity;
        foreach (ref readonly Vector3d corner in corners) least = Math.Min(least, Vector3d.Dot(n, corner - corners[0]));
        Vector3d sum = Vector3d.Zero;
        int count = 0;
        foreach (ref readonly Vector3d corner in corners)
        {
            if (Vector3d.Dot(n, corner - corners[0]) > least + SameMm) continue;
            sum += corner - corners[0];
            count++;
        }

        return corners[0] + (sum / Math.Max(count, 1));
    }

    // Comparisons pass over a corner that is no number, and the rest would look like a sound answer.
    private static bool IsNumber(in Piece piece)
    {
        double sum = piece.Radius;
        foreach (ref readonly Vector3d corner in piece.Corners) sum += corner.X + corner.Y + corner.Z;
        return !double.IsNaN(sum);
    }

    private static Capsule Capsule(in Piece piece) => new(piece.Corners[0], piece.Corners[^1], piece.Radius);
}
