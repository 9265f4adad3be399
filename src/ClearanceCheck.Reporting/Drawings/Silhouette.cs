using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>What is seen of a part: a chain of thick line, convex pieces, or both.</summary>
/// <param name="Radius">Of the chain, in the drawing's units.</param>
internal sealed record Silhouette(ImmutableArray<PagePoint> Chain, double Radius, bool Dashed, ImmutableArray<SilhouettePiece> Pieces)
{
    private const int StepsPerStretch = 24;

    /// <summary>Projects a part.</summary>
    /// <param name="project">From the vehicle frame to the page.</param>
    public static Silhouette Of(DrawnPart part, Func<Vector3d, PagePoint> project, double unitsPerMm) => new(
        [.. part.Points.Select(project)],
        part.RadiusMm * unitsPerMm,
        part.Dashed,
        [.. part.Pieces.Where(p => !p.Corners.IsEmpty).Select(p => new SilhouettePiece([.. ConvexHull.Of(p.Corners.Select(project))], p.RadiusMm * unitsPerMm))]);

    public bool IsEmpty => Chain.IsEmpty && Pieces.IsEmpty;

    /// <summary>The same without the pieces that change nothing: those of which a window shows nothing, and those that lie wholly on another.</summary>
    public Silhouette Within(double width, double height, double around)
    {
        List<SilhouettePiece> kept = [];
        foreach (SilhouettePiece piece in Pieces.Where(p => p.Touches(width, height, around)).OrderByDescending(p => p.Size))
            if (!kept.Exists(k => k.Covers(piece))) kept.Add(piece);
        return this with { Pieces = [.. kept] };
    }

    /// <summary>Distance from a place to the part's nearest edge, in the drawing's units; negative on the part.</summary>
    public double RoomBeside(PagePoint place)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < Chain.Length; i++) least = Math.Min(least, place.DistanceTo(Chain[Math.Max(i - 1, 0)], Chain[i]));
        least -= Radius;
        foreach (SilhouettePiece piece in Pieces) least = Math.Min(least, piece.RoomBeside(place));
        return least;
    }

    /// <summary>Places along the chain, close together.</summary>
    public IEnumerable<PagePoint> AlongChain()
    {
        for (int i = 1; i < Chain.Length; i++)
            for (int step = 0; step <= StepsPerStretch; step++)
                yield return Chain[i - 1] + ((Chain[i] - Chain[i - 1]) * ((double)step / StepsPerStretch));
    }
}
