using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The signed gap of two convex pieces: one function for all pairs of shapes and on both sides of zero.</summary>
/// <remarks>
/// The gap is the largest separation along any direction n, (least n.x over the first) - (largest n.x over the second), radii taken off:
/// the distance of the corners' hulls while these are apart, minus the depth of their overlap where they meet. Two chains' capsules have
/// a closed form (<see cref="CapsuleCapsule"/>), points, segments and triangles another (<see cref="SimplexDistance"/>), all other pairs
/// are searched (<see cref="PolytopeDistance"/>). A distance is believed once its own direction separates the pieces by as much. Where it
/// does not - hulls that touch or overlap, features that are nearest by a hair, a search that stopped short - the pieces' faces and edges
/// are asked (<see cref="SeparatingAxes"/>): each of their directions is a proof in itself. Pieces are measured in one order, whichever
/// comes first, so exchanging them gives the same bits.
/// </remarks>
public static class SignedGap
{
    // Hulls nearer than this, mm: the difference of two points no longer says well enough in which direction they lie apart.
    private const double NearMm = 1e-4;

    // Below this distance, mm, a closed form can't tell apart from touching.
    private const double TouchMm = 1e-10;

    // What rounding leaves of the separation of flat pieces in one plane, mm: more than this below zero is an overlap.
    private const double OverlapMm = 1e-11;

    // A direction that separates by this much less than the distance proves it, mm.
    private const double ProofMm = 1e-10;

    // Pieces that all but touch and are found apart by more than is proved, mm: the search stopped short.
    private const double StalledMm = 1e-11;

    /// <summary>The gap of two pieces in one frame.</summary>
    public static PieceGap Measure(in Piece first, in Piece second) => Measure(first, second, exactDepth: true);

    /// <summary>The gap of two pieces in one frame.</summary>
    /// <param name="first">A piece.</param>
    /// <param name="second">Another.</param>
    /// <param name="exactDepth">
    /// False where a lower bound is enough once the hulls overlap, as for pieces that only hold others. The witness points then stand the
    /// gap apart, but the second need not lie on its piece.
    /// </param>
    public static PieceGap Measure(in Piece first, in Piece second, bool exactDepth)
    {
        if (!IsNumber(first) || !IsNumber(second)) return new PieceGap(double.NaN, Vector3d.UnitZ, first.Corners[0], second.Corners[0]);
        if (PieceOrder.Compare(first, second) <= 0) return InOrder(first, second, exactDepth);
        PieceGap swapped = InOrder(second, first, exactDepth);
        return new PieceGap(swapped.Gap, -swapped.Direction, swapped.OnSecond, swapped.OnFirst);
    }

    private static PieceGap InOrder(in Piece first, in Piece second, bool exactDepth)
    {
        if (first.Corners.Length <= 2 && second.Corners.Length <= 2) return CapsuleCapsule.Measure(Capsule(first), Capsule(second));
        // All products are of differences from a place on the first piece, wherever both are.
        Span<Vector3d> room = stackalloc Vector3d[2 * Piece.MaximumCorners];
        Vector3d origin = first.Corners[0];
        PieceGap near = NearOrigin(Shifted(first, origin, room), Shifted(second, origin, room[first.Corners.Length..]), exactDepth);
        return near with { OnFirst = origin + near.OnFirst, OnSecond = origin + near.OnSecond };
    }

    private static PieceGap NearOrigin(in Piece first, in Piece second, bool exactDepth)
    {
        bool closedForm = first.Corners.Length <= 3 && second.Corners.Length <= 3;
        (Vector3d onFirst, Vector3d onSecond) = closedForm
            ? SimplexDistance.Nearest(first.Corners, second.Corners)
            : PolytopeDistance.Nearest(first.Corners, second.Corners);
        Vector3d apart = onFirst - onSecond;
        double distance = apart.Length;
        if (distance > NearMm && Separation(first, second, apart / distance) >= distance - ProofMm) return Witnessed(first, second, distance, apart / distance, onFirst);
        (double separation, Vector3d n) = SeparatingAxes.Best(first, second, exactDepth, apart);
        if (exactDepth && !closedForm && separation > -NearMm && distance - separation > StalledMm)
            (separation, n) = Sharper(separation, n, SeparatingAxes.Best(first, second, exactDepth, NearFeatures.Apart(first.Corners, second.Corners, n)));
        // Two points of the hulls are never nearer than the hulls, a separation is never more: the search's own distance may be too large.
        double core = closedForm && !IsOverlap(distance, separation, exactDepth) ? Math.Max(distance, separation) : separation;
        bool isMet = core >= 0 && (apart - (n * core)).LengthSquared <= TouchMm * TouchMm;
        return Witnessed(first, second, core, n, isMet ? onFirst : ContactPoint.Find(first.Corners, second.Corners, n, core, exactDepth));
    }

    private static (double Separation, Vector3d Direction) Sharper(double separation, Vector3d n, (double Separation, Vector3d Direction) other) =>
        other.Separation > separation ? other : (separation, n);

    private static bool IsOverlap(double distance, double separation, bool exactDepth) =>
        (exactDepth && separation < -OverlapMm) || distance <= TouchMm;

    private static double Separation(in Piece first, in Piece second, Vector3d n)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (ref readonly Vector3d corner in first.Corners) low = Math.Min(low, Vector3d.Dot(n, corner));
        foreach (ref readonly Vector3d corner in second.Corners) high = Math.Max(high, Vector3d.Dot(n, corner));
        return low - high;
    }

    private static PieceGap Witnessed(in Piece first, in Piece second, double core, Vector3d n, Vector3d onFirst) => new(
        core - first.Radius - second.Radius, n, onFirst - (n * first.Radius), onFirst - (n * (core - second.Radius)));

    // Comparisons pass over a corner that is no number, and the rest would look like a sound answer.
    private static bool IsNumber(in Piece piece)
    {
        double sum = piece.Radius;
        foreach (ref readonly Vector3d corner in piece.Corners) sum += corner.X + corner.Y + corner.Z;
        return !double.IsNaN(sum);
    }

    private static Piece Shifted(in Piece piece, Vector3d origin, Span<Vector3d> room)
    {
        int count = piece.Corners.Length;
        for (int i = 0; i < count; i++) room[i] = piece.Corners[i] - origin;
        return new Piece(room[..count], piece.Kind, piece.Radius);
    }

    private static Capsule Capsule(in Piece piece) => new(piece.Corners[0], piece.Corners[^1], piece.Radius);
}
