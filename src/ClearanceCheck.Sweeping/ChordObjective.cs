using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping;

/// <summary>The negative distance of a point of the second body from a point of the first: least where the chord is longest.</summary>
internal sealed class ChordObjective(Vector3d onFirst, Vector3d onSecond) : ISweepObjective
{
    private readonly Vector3d[] anchors = [onSecond];
    private readonly double[] corners = new double[16];

    public ReadOnlySpan<Vector3d> Anchors => anchors;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(in RigidMotion secondInFirst, out Witness witness)
    {
        Vector3d end = secondInFirst.Apply(onSecond);
        witness = new Witness(0, 0, onFirst, end);
        return -(end - onFirst).Length;
    }

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        Span<double> remainders = stackalloc double[cell.Dimensions];
        for (int c = 0; c < cell.CornerCount; c++) corners[c] = -(cell.Corners[c].Apply(onSecond) - onFirst).Length;
        for (int k = 0; k < remainders.Length; k++) remainders[k] = cell.Curvatures[k].Length * cell.Widths[k] * cell.Widths[k] / 8;
        double bound = cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, new CellLoss(outcome.Loss.AsSpan(0, cell.Dimensions), outcome.PlainLoss.AsSpan(0, cell.Dimensions)));
        outcome.CentreValue = Evaluate(cell.Centre, out Witness witness);
        outcome.CentreWitness = witness;
        if (bound >= threshold)
        {
            outcome.Settled = bound;
            return;
        }

        outcome.Bound = bound;
        outcome.Open.Add(default);
    }
}
