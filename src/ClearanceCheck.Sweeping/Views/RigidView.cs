using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A solid on a body that moves in the frame of the search.</summary>
internal sealed class RigidView(RigidSolid swept) : SolidView
{
    private readonly Solid solid = swept.Solid;
    private readonly SweptTrack[] tracks = [new(swept.Body, FewAnchors.Around(swept.Solid.Anchors))];
    private RigidMotion pose;
    private TrackMotion cell = new(0, 0);

    public override IReadOnlyList<SweptTrack> Tracks => tracks;

    public override int NodeCount => solid.NodeCount;

    public override int Left(int node) => solid.Left(node);

    public override int Right(int node) => solid.Right(node);

    public override double Thickness(int node) => solid.Thickness(node);

    public override PieceKind Kind(int node) => solid.Kind(node);

    public override void Pose(ReadOnlySpan<RigidMotion> tracks) => pose = tracks[0];

    public override int Corners(int node, Span<Vector3d> corners) => Corners(pose, node, corners);

    public override double Radius(int node) => solid.Radius(node);

    public override double Support(int node, Vector3d n) => Support(pose, node, n);

    public override void Load(ReadOnlySpan<TrackMotion> tracks) => (cell, pose) = (tracks[0], tracks[0].Centre);

    public override double SupportAt(int corner, int node, Vector3d n) => Support(cell.Corners[corner], node, n);

    public override int CornersAt(int corner, int node, Span<Vector3d> corners) => Corners(cell.Corners[corner], node, corners);

    public override double CellRadius(int corner, int node) => solid.Radius(node);

    public override double Curvature(int coordinate, Vector3d n) => cell.Curvatures[coordinate].Along(n);

    public override double CurvatureLength(int coordinate) => cell.Curvatures[coordinate].Length;

    private double Support(in RigidMotion at, int node, Vector3d n) =>
        Vector3d.Dot(n, at.Translation) + solid.Support(node, at.ApplyInverseToDirection(n));

    private int Corners(in RigidMotion at, int node, Span<Vector3d> corners)
    {
        int count = solid.Corners(node, corners);
        for (int i = 0; i < count; i++) corners[i] = at.Apply(corners[i]);
        return count;
    }
}
