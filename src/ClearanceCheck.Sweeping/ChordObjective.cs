using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping;

/// <summary>The negative distance of a point of the second body from a point of the first: least where the chord is longest.</summary>
internal sealed class ChordObjective(int frameBody, Vector3d onFirst, int body, Vector3d onSecond) : ISweepObjective
{
    private readonly SweptTrack[] tracks = [new(body, [onSecond])];
    private readonly double[] corners = new double[16];

    public int FrameBody => frameBody;

    public IReadOnlyList<SweptTrack> Tracks => tracks;

    public long Work => 0;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness)
    {
        Vector3d end = tracks[0].Apply(onSecond);
        witness = new Witness(0, 0, onFirst, end);
        return -(end - onFirst).Length;
    }

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        TrackMotion motion = cell.Tracks[0];
        Span<double> remainders = stackalloc double[cell.Dimensions];
        for (int c = 0; c < cell.CornerCount; c++) corners[c] = -(motion.Corners[c].Apply(onSecond) - onFirst).Length;
        for (int k = 0; k < remainders.Length; k++) remainders[k] = motion.Curvatures[k].Length * cell.Widths[k] * cell.Widths[k] / 8;
        double bound = cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, new CellLoss(outcome.Loss.AsSpan(0, cell.Dimensions), outcome.PlainLoss.AsSpan(0, cell.Dimensions)));
        outcome.CentreValue = Evaluate([motion.Centre], out Witness witness);
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
