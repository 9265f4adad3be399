using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>The negative of an angle, degrees, between an axis that is fixed in the frame and a vector that moves: least where the angle is largest.</summary>
/// <param name="frameBody">The body that carries the axis.</param>
/// <param name="axis">In its coordinates, of any length but zero.</param>
/// <param name="mark">Where the joint is, for the witness.</param>
/// <param name="vector">What moves, in mm.</param>
internal abstract class AxisAngleObjective(int frameBody, Vector3d axis, Vector3d mark, SweptVector vector) : ISweepObjective
{
    public int FrameBody => frameBody;

    public IReadOnlyList<SweptTrack> Tracks => View.Tracks;

    public long Work => 0;

    public ImmutableArray<OpenFeature> Root => [default];

    /// <summary>The axis, of length one.</summary>
    protected Vector3d Axis { get; } = axis.NormalizedOr(Vector3d.UnitX);

    protected VectorView View { get; } = new(vector, frameBody, 0);

    /// <summary>Room for a value at each corner of a cell.</summary>
    protected double[] Corners { get; } = new double[1 << PoseBox.MaximumDimensions];

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness) => Value(View.Value(tracks), out witness);

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        View.Load(cell);
        Vector3d centre = View.AtCentre();
        outcome.CentreValue = Value(centre, out Witness witness);
        outcome.CentreWitness = witness;
        double bound = Bound(cell, centre, new CellLoss(outcome.Loss.AsSpan(0, cell.Dimensions), outcome.PlainLoss.AsSpan(0, cell.Dimensions)));
        if (bound >= threshold)
        {
            outcome.Settled = bound;
            return;
        }

        outcome.Bound = bound;
        outcome.Open.Add(default);
    }

    /// <summary>The angle of a vector, degrees.</summary>
    protected abstract double Degrees(Vector3d d);

    /// <summary>No reachable pose of the cell has a lower value.</summary>
    /// <param name="cell">The cell; <see cref="View"/> has loaded it.</param>
    /// <param name="centre">The vector at its centre.</param>
    /// <param name="loss">Filled with what each coordinate costs.</param>
    protected abstract double Bound(CellGeometry cell, Vector3d centre, CellLoss loss);

    private double Value(Vector3d d, out Witness witness)
    {
        witness = new Witness(0, 0, mark, mark + d);
        return -Degrees(d);
    }
}
