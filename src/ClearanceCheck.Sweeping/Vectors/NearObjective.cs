using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>The length of a moving vector, mm: least where two places come nearest.</summary>
/// <remarks>For any unit n the length is at least n.d, which is linear in d: with n along the vector at the cell's centre the bound closes with the square of the cell.</remarks>
internal sealed class NearObjective(int frameBody, Vector3d mark, SweptVector vector) : ISweepObjective
{
    private readonly VectorView view = new(vector, frameBody, 0);
    private readonly double[] corners = new double[1 << PoseBox.MaximumDimensions];

    public int FrameBody => frameBody;

    public IReadOnlyList<SweptTrack> Tracks => view.Tracks;

    public long Work => 0;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness)
    {
        Vector3d d = view.Value(tracks);
        witness = new Witness(0, 0, mark, mark + d);
        return d.Length;
    }

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        view.Load(cell);
        Vector3d centre = view.AtCentre(), n = centre.NormalizedOr(Vector3d.UnitZ);
        outcome.CentreValue = centre.Length;
        outcome.CentreWitness = new Witness(0, 0, mark, mark + centre);
        Span<double> remainders = stackalloc double[cell.Dimensions];
        for (int c = 0; c < cell.CornerCount; c++) corners[c] = Vector3d.Dot(n, view.AtCorner(c));
        for (int k = 0; k < remainders.Length; k++) remainders[k] = view.RemainderBelow(k, n);
        double bound = Math.Max(0, cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, new CellLoss(outcome.Loss.AsSpan(0, cell.Dimensions), outcome.PlainLoss.AsSpan(0, cell.Dimensions))));
        if (bound >= threshold)
        {
            outcome.Settled = bound;
            return;
        }

        outcome.Bound = bound;
        outcome.Open.Add(default);
    }
}
