using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>A sum of angles in planes, degrees, each times its factor: toe of one wheel or of two, steer, the angle of a rod to an arm.</summary>
/// <remarks>
/// The bound and its proof. At a trial angle t (that of the cell's centre), with n and m the unit vectors across and along the trial
/// direction in the plane, h = n.d and l = m.d, an angle is t + atan(h / l) wherever l is above zero. Both are linear in d. With r = l at the
/// centre, atan(h / l) differs from h / r by at most |h| |1/l - 1/r| + |h/l|^3 / 3, and the cell bounds |h| and l. So the sum is the constant
/// sum of t, a linear function of the vectors, sum of factor h / r, which
/// <see cref="CellGeometry.Bound(ReadOnlySpan{double}, ReadOnlySpan{double}, CellLoss)"/> bounds, and an error that goes with the square of
/// the cell. Where l may be zero in the cell nothing is said of it. Angles are taken from -180 to 180: put zero where the vector starts.
/// </remarks>
internal sealed class PlaneAngleObjective : ISweepObjective
{
    private readonly ImmutableArray<PlaneAngle> angles;
    private readonly VectorView[] views;
    private readonly Vector3d mark;
    private readonly double[] corners = new double[1 << PoseBox.MaximumDimensions];

    /// <param name="frameBody">The body that carries the planes.</param>
    /// <param name="angles">What adds up.</param>
    /// <param name="mark">For the witness: from here the first vector is shown.</param>
    public PlaneAngleObjective(int frameBody, ImmutableArray<PlaneAngle> angles, Vector3d mark)
    {
        (FrameBody, this.angles, this.mark) = (frameBody, angles, mark);
        views = new VectorView[angles.Length];
        var tracks = new List<SweptTrack>();
        for (int i = 0; i < views.Length; i++)
        {
            views[i] = new VectorView(angles[i].Vector, frameBody, tracks.Count);
            tracks.AddRange(views[i].Tracks);
        }

        Tracks = tracks;
    }

    public int FrameBody { get; }

    public IReadOnlyList<SweptTrack> Tracks { get; }

    public long Work => 0;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness)
    {
        double sum = 0;
        for (int i = 0; i < views.Length; i++) sum += angles[i].Factor * angles[i].Of(views[i].Value(tracks));
        witness = new Witness(0, 0, mark, mark + views[0].Value(tracks));
        return sum * Trigonometry.DegreesPerRadian;
    }

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        foreach (VectorView view in views) view.Load(cell);
        Span<RigidMotion> centre = stackalloc RigidMotion[Tracks.Count];
        for (int t = 0; t < centre.Length; t++) centre[t] = cell.Tracks[t].Centre;
        outcome.CentreValue = Evaluate(centre, out Witness witness);
        outcome.CentreWitness = witness;
        double bound = Bound(cell, outcome.CentreValue, new CellLoss(outcome.Loss.AsSpan(0, cell.Dimensions), outcome.PlainLoss.AsSpan(0, cell.Dimensions)));
        if (bound >= threshold)
        {
            outcome.Settled = bound;
            return;
        }

        outcome.Bound = bound;
        outcome.Open.Add(default);
    }

    private double Bound(CellGeometry cell, double centreValue, CellLoss loss)
    {
        Span<double> remainders = stackalloc double[cell.Dimensions];
        Span<double> sums = corners.AsSpan(0, cell.CornerCount);
        remainders.Clear();
        sums.Clear();
        double error = 0;
        for (int i = 0; i < views.Length; i++)
        {
            if (AddLinear(cell, i, sums, remainders) is not { } own) return double.NegativeInfinity;
            error += own;
        }

        return centreValue + cell.Bound(sums, remainders, loss) - error - CellGeometry.SlackMm;
    }

    // Adds an angle's linear part, degrees, and gives the most by which the angle can lie beside it; null where its vector may turn by a quarter.
    private double? AddLinear(CellGeometry cell, int i, Span<double> sums, Span<double> remainders)
    {
        (PlaneAngle angle, VectorView view) = (angles[i], views[i]);
        (double sin, double cos) = Trigonometry.SinCos(angle.Of(view.AtCentre()));
        Vector3d n = (cos * angle.Across) - (sin * angle.Along), m = (cos * angle.Along) + (sin * angle.Across);
        double r = Vector3d.Dot(m, view.AtCentre()), shortest = view.Least(m), longest = -view.Least(-m);
        double most = Math.Max(-view.Least(n), -view.Least(-n));
        if (!(shortest > 0) || !(r > 0)) return null;
        double scale = Trigonometry.DegreesPerRadian * angle.Factor / r;
        for (int c = 0; c < sums.Length; c++) sums[c] += scale * Vector3d.Dot(n, view.AtCorner(c));
        for (int k = 0; k < remainders.Length; k++) remainders[k] += Math.Abs(scale) * view.RemainderBelow(k, scale < 0 ? -n : n);
        double share = most / shortest;
        double beside = (most * Math.Max((1 / shortest) - (1 / r), (1 / r) - (1 / longest))) + (share * share * share / 3);
        return Math.Abs(angle.Factor) * beside * Trigonometry.DegreesPerRadian;
    }
}
