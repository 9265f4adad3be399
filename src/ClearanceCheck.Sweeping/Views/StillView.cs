using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A solid on the body in whose frame the search runs.</summary>
internal sealed class StillView(Solid solid) : SolidView
{
    public override IReadOnlyList<SweptTrack> Tracks => [];

    public override int NodeCount => solid.NodeCount;

    public override int Left(int node) => solid.Left(node);

    public override int Right(int node) => solid.Right(node);

    public override double Thickness(int node) => solid.Thickness(node);

    public override PieceKind Kind(int node) => solid.Kind(node);

    public override void Pose(ReadOnlySpan<RigidMotion> tracks)
    {
    }

    public override int Corners(int node, Span<Vector3d> corners) => solid.Corners(node, corners);

    public override double Radius(int node) => solid.Radius(node);

    public override double Support(int node, Vector3d n) => solid.Support(node, n);

    public override void Load(ReadOnlySpan<TrackMotion> tracks)
    {
    }

    public override double SupportAt(int corner, int node, Vector3d n) => solid.Support(node, n);

    public override int CornersAt(int corner, int node, Span<Vector3d> corners) => solid.Corners(node, corners);

    public override double CellRadius(int corner, int node) => solid.Radius(node);

    public override double Curvature(int coordinate, Vector3d n) => 0;

    public override double CurvatureLength(int coordinate) => 0;

    public override double InsideHollow(int node, Vector3d point) => solid.InsideHollow(node, point);
}
