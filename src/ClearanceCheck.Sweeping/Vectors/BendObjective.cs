using ClearanceCheck.Geometry;

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
internal sealed class BendObjective(int frameBody, Vector3d axis, Vector3d mark, SweptVector vector) : AxisAngleObjective(frameBody, axis, mark, vector)
{
    private const double QuarterTurnDeg = 90;

    protected override double Degrees(Vector3d d) => Math.Min(QuarterTurnDeg, Angle(d) * Trigonometry.DegreesPerRadian);

    protected override double Bound(CellGeometry cell, Vector3d centre, CellLoss loss)
    {
        double shortest = View.Least(centre.NormalizedOr(Axis));
        if (!(shortest > CellGeometry.SlackMm) || !(View.Least(Axis) > 0)) return -QuarterTurnDeg;
        double trial = Angle(centre), scale = Trigonometry.DegreesPerRadian / shortest, longest = 0;
        (double sin, double cos) = Trigonometry.SinCos(trial);
        Span<double> remainders = stackalloc double[cell.Dimensions];
        double remainder = 0;
        for (int k = 0; k < remainders.Length; k++)
        {
            remainder += View.Remainder(k);
            remainders[k] = View.Remainder(k) * scale;
        }

        for (int c = 0; c < cell.CornerCount; c++)
        {
            Vector3d d = View.AtCorner(c);
            double along = Vector3d.Dot(Axis, d);
            Corners[c] = -(((d - (along * Axis)).Length * cos) - (along * sin)) * scale;
            longest = Math.Max(longest, d.Length);
        }

        double beyond = -(cell.Bound(Corners.AsSpan(0, cell.CornerCount), remainders, loss) / scale) + CellGeometry.SlackMm;
        double most = trial + Trigonometry.Asin(Math.Clamp(beyond / (beyond > 0 ? shortest : longest + remainder), -1, 1));
        return -Math.Min(QuarterTurnDeg, most * Trigonometry.DegreesPerRadian) - CellGeometry.SlackMm;
    }

    // Exact for small angles too.
    private double Angle(Vector3d d) => Trigonometry.Atan2(Vector3d.Cross(Axis, d).Length, Vector3d.Dot(Axis, d));
}
