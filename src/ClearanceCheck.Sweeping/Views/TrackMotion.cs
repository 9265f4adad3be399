using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Views;

/// <summary>A track's motion over one cell, in the frame of the search.</summary>
internal sealed class TrackMotion(int corners, int dimensions)
{
    public RigidMotion Centre { get; set; }

    public RigidMotion[] Corners { get; } = new RigidMotion[corners];

    /// <summary>Per coordinate, for all anchors of the track.</summary>
    public Curvature[] Curvatures { get; } = new Curvature[dimensions];
}
