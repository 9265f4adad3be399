using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping;

/// <summary>What a search makes least: the gap, or the negative of a chord.</summary>
internal interface ISweepObjective
{
    /// <summary>Points of the second body whose motion bounds the objective's.</summary>
    ReadOnlySpan<Vector3d> Anchors { get; }

    /// <summary>Where the search begins.</summary>
    ImmutableArray<OpenFeature> Root { get; }

    /// <summary>The objective in one pose with its witness.</summary>
    double Evaluate(in RigidMotion secondInFirst, out Witness witness);

    /// <summary>True for a value that is the objective itself; false where pieces overlap and it may be less ("at least").</summary>
    bool IsExact(double value);

    /// <summary>Bounds the objective from below over a cell.</summary>
    /// <param name="cell">Centre, corners, curvature and stops of the cell.</param>
    /// <param name="open">What the parent left open.</param>
    /// <param name="threshold">A bound from here on settles a feature.</param>
    /// <param name="outcome">Cleared, to be filled.</param>
    void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome);
}
