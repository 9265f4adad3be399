using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Bodies that move with a pose: solved by a linkage, or given by a formula.</summary>
/// <remarks>A pose's answer is a function of the pose alone, whoever asks first and from whichever thread.</remarks>
public interface IMovingSystem
{
    PoseBox Box { get; }

    /// <summary>What cuts the box.</summary>
    ImmutableArray<Stop> Stops { get; }

    /// <summary>Number of poses solved so far: for reports only, never read back.</summary>
    long Solves { get; }

    /// <summary>A pose that cells share; kept.</summary>
    SolvedPose At(in DyadicPose pose);

    /// <summary>Any pose of the box; not kept.</summary>
    SolvedPose At(ReadOnlySpan<double> pose);

    /// <summary>True when it is proved that no pose of the cell can be reached by the linkage.</summary>
    bool IsUnreachable(in DyadicCell cell);

    /// <summary>Regions that cover the cell, each with bounds that serve other cells as well.</summary>
    IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell);

    /// <summary>Bounds, coordinate by coordinate over the cell, the second derivatives of points of one body in the frame of another.</summary>
    /// <param name="anchors">Points in the body's own coordinates; the bound holds for their convex hull.</param>
    /// <param name="perCoordinate">Filled with one bound a coordinate.</param>
    CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate);

    /// <summary>The least part of the system that moves some bodies by itself, when it has fewer coordinates; null when they need all.</summary>
    /// <param name="bodies">Numbers of bodies.</param>
    MovingPart? PartFor(IEnumerable<int> bodies) => null;
}
