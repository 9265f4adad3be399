using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>The negative angle in space, degrees, between an axis that is fixed in the frame and a vector that moves: least where a joint is bent most.</summary>
/// <remarks>
/// The bound and its proof. With the unit axis a and a trial angle t, the function g(d) = |d - (a.d) a| cos t - (a.d) sin t of the
/// vector d is |d| sin(b - t), b the angle between both. It is convex (a length of a linear image, less a linear function) and changes by
/// no more than the change of d, so over a cell it is at most the interpolation of its corner values and the vector's remainder: -g has
/// the form that <see cref="CellGeometry.Bound(ReadOnlySpan{double}, ReadOnlySpan{double}, CellLoss)"/> bounds, stops and all. Where
/// a.d is above zero all over the cell b is below a quarter turn and b - t too, so the sine rises with b, and g at most B gives
/// b at most t + asin(B / |d|), |d| its least in the cell for B above zero and its most for B below. Elsewhere nothing is said of the
/// cell but a quarter turn, which is where the value ends too: no joint that is used bends that far.
/// </remarks>
internal sealed class BendObjective : ISweepObjective
{
    private const double QuarterTurnDeg = 90;

    private readonly Vector3d axis;
    private readonly Vector3d mark;
    private readonly VectorView view;
    private readonly double[] corners = new double[1 << PoseBox.MaximumDimensions];

    /// <param name="frameBody">The body that carries the axis.</param>
    /// <param name="axis">In its coordinates, of any length but zero.</param>
    /// <param name="mark">Where the joint is, for the witness.</param>
    /// <param name="vector">What moves, in mm.</param>
    public BendObjective(int frameBody, Vector3d axis, Vector3d mark, SweptVector vector)
    {
        (FrameBody, this.axis, this.mark) = (frameBody, axis.NormalizedOr(Vector3d.UnitX), mark);
        view = new VectorView(vector, frameBody, 0);
    }

    public int FrameBody { get; }

    public IReadOnlyList<SweptTrack> Tracks => view.Tracks;

    public long Work => 0;

    public ImmutableArray<OpenFeature> Root => [default];

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness) => Value(view.Value(tracks), out witness);

    public bool IsExact(double value) => true;

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome)
    {
        view.Load(cell);
        Vector3d centre = view.AtCentre();
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

    private double Bound(CellGeometry cell, Vector3d centre, CellLoss loss)
    {
        double shortest = view.Least(centre.NormalizedOr(axis));
        if (!(shortest > CellGeometry.SlackMm) || !(view.Least(axis) > 0)) return -QuarterTurnDeg;
        double trial = Angle(centre), scale = Trigonometry.DegreesPerRadian / shortest, longest = 0;
        (double sin, double cos) = Trigonometry.SinCos(trial);
        Span<double> remainders = stackalloc double[cell.Dimensions];
        double remainder = 0;
        for (int k = 0; k < remainders.Length; k++)
        {
            remainder += view.Remainder(k);
            remainders[k] = view.Remainder(k) * scale;
        }

        for (int c = 0; c < cell.CornerCount; c++)
        {
            Vector3d d = view.AtCorner(c);
            double along = Vector3d.Dot(axis, d);
            corners[c] = -(((d - (along * axis)).Length * cos) - (along * sin)) * scale;
            longest = Math.Max(longest, d.Length);
        }

        double beyond = -(cell.Bound(corners.AsSpan(0, cell.CornerCount), remainders, loss) / scale) + CellGeometry.SlackMm;
        double most = trial + Trigonometry.Asin(Math.Clamp(beyond / (beyond > 0 ? shortest : longest + remainder), -1, 1));
        return -Math.Min(QuarterTurnDeg, most * Trigonometry.DegreesPerRadian) - CellGeometry.SlackMm;
    }

    private double Value(Vector3d d, out Witness witness)
    {
        witness = new Witness(0, 0, mark, mark + d);
        return -Math.Min(QuarterTurnDeg, Angle(d) * Trigonometry.DegreesPerRadian);
    }

    // Exact for small angles too.
    private double Angle(Vector3d d) => Trigonometry.Atan2(Vector3d.Cross(axis, d).Length, Vector3d.Dot(axis, d));
}
