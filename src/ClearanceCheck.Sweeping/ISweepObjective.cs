using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping;

/// <summary>What a search makes least: the gap, or the negative of a chord.</summary>
internal interface ISweepObjective
{
    /// <summary>The body in whose frame the search runs.</summary>
    int FrameBody { get; }

    /// <summary>The bodies whose motion there matters, with the points that bound it.</summary>
    IReadOnlyList<SweptTrack> Tracks { get; }

    /// <summary>How many pairs of pieces were measured so far.</summary>
    long Work { get; }

    /// <summary>Where the search begins.</summary>
    ImmutableArray<OpenFeature> Root { get; }

    /// <summary>The objective in one pose with its witness, points in the frame of the search.</summary>
    /// <param name="tracks">The motion of each of <see cref="Tracks"/> in the frame of the search.</param>
    /// <param name="witness">Where it is seen.</param>
    double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness);

    /// <summary>True for a value that is the objective itself; false where pieces overlap and it may be less ("at least").</summary>
    bool IsExact(double value);

    /// <summary>Bounds the objective from below over a cell.</summary>
    /// <param name="cell">Centre, corners, curvature and stops of the cell.</param>
    /// <param name="open">What the parent left open.</param>
    /// <param name="threshold">A bound from here on settles a feature.</param>
    /// <param name="outcome">Cleared, to be filled.</param>
    void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome);

    /// <summary>The objective in a solved pose.</summary>
    double Evaluate(SolvedPose pose, out Witness witness)
    {
        Span<RigidMotion> tracks = stackalloc RigidMotion[Tracks.Count];
        for (int t = 0; t < tracks.Length; t++) tracks[t] = pose.Relative(FrameBody, Tracks[t].Body);
        return Evaluate(tracks, out witness);
    }
}
