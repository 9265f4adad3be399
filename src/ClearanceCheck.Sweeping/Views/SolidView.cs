using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A solid as one search sees it: in the frame of the search, in one pose or at the corners of one cell.</summary>
internal abstract class SolidView
{
    /// <summary>Bodies whose motion in the frame of the search moves the solid; none for a solid that stands still there.</summary>
    public abstract IReadOnlyList<SweptTrack> Tracks { get; }

    public abstract int Left(int node);

    public abstract int Right(int node);

    /// <summary>By how much the node may reach beyond the leaves below it, mm.</summary>
    public abstract double Thickness(int node);

    public abstract PieceKind Kind(int node);

    /// <summary>Takes the pose that the following questions are about.</summary>
    /// <param name="tracks">The motion of each of <see cref="Tracks"/>.</param>
    public abstract void Pose(ReadOnlySpan<RigidMotion> tracks);

    /// <summary>The node's corners in the pose, in the frame of the search.</summary>
    public abstract int Corners(int node, Span<Vector3d> corners);

    /// <summary>The radius around the corners in the pose, mm.</summary>
    public abstract double Radius(int node);

    /// <summary>The largest n.x over the node in the pose.</summary>
    public abstract double Support(int node, Vector3d n);

    /// <summary>Takes the cell whose corners the following questions are about, and its centre for the pose.</summary>
    public abstract void Load(ReadOnlySpan<TrackMotion> tracks);

    /// <summary>The largest n.x over the node at a corner of the cell.</summary>
    public abstract double SupportAt(int corner, int node, Vector3d n);

    /// <summary>The node's corners at a corner of the cell. Their hull, with <see cref="CellRadius"/>, holds all leaves below there.</summary>
    public abstract int CornersAt(int corner, int node, Span<Vector3d> corners);

    /// <summary>The radius that goes with <see cref="CornersAt"/>.</summary>
    public abstract double CellRadius(int corner, int node);

    /// <summary>The most by which the second derivative of n.x, for any point of the solid, can lie below zero in the cell.</summary>
    public abstract double Curvature(int coordinate, Vector3d n);

    /// <summary>The length of the second derivative of any point of the solid in the cell, at most.</summary>
    public abstract double CurvatureLength(int coordinate);

    /// <summary>See <see cref="Solid.InsideHollow"/>; only for solids that stand still in the frame of the search.</summary>
    public virtual double InsideHollow(int node, Vector3d point) => double.NegativeInfinity;

    /// <summary>How many nodes its tree has.</summary>
    public abstract int NodeCount { get; }

    public bool Has(int node) => node >= 0 && node < NodeCount;

    public bool IsLeaf(int node) => Left(node) < 0;

    /// <summary>The view of a solid in the frame of a body.</summary>
    public static SolidView Of(SweptSolid solid, int frameBody) => solid switch
    {
        RigidSolid rigid when rigid.Body == frameBody => new StillView(rigid.Solid),
        RigidSolid rigid => new RigidView(rigid),
        BlendedChain blended => new BlendedView(blended),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
