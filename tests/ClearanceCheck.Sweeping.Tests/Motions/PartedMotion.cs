using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>A motion that has a part of its own for some bodies.</summary>
internal sealed class PartedMotion(IMovingSystem whole, MovingPart part) : IMovingSystem
{
    public PoseBox Box => whole.Box;

    public ImmutableArray<Stop> Stops => whole.Stops;

    public long Solves => whole.Solves;

    public SolvedPose At(in DyadicPose pose) => whole.At(pose);

    public SolvedPose At(ReadOnlySpan<double> pose) => whole.At(pose);

    public bool IsUnreachable(in DyadicCell cell) => whole.IsUnreachable(cell);

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => whole.CurvatureRegions(cell);

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate) =>
        whole.Curvatures(cell, frameBody, body, anchors, perCoordinate);

    public MovingPart? PartFor(IEnumerable<int> bodies) => bodies.All(b => part.Bodies.Contains(b)) ? part : null;
}
