using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>The negative angle, degrees, by which a moving vector leans out of the plane square to an axis towards where the axis points: least where it leans most.</summary>
/// <remarks>
/// The bound and its proof. With the unit axis a, the vector's lean b (its sine is a.d / |d|) and a trial lean t of zero or more,
/// a.d cos t - |d - (a.d) a| sin t is |d| sin(b - t). The length of what is square to the axis is at least u.d for any unit u square to it,
/// so |d| sin(b - t) is at most L(d) = (a cos t - u sin t).d, which is linear in d: over a cell it is at most what
/// <see cref="CellGeometry.Bound(ReadOnlySpan{double}, ReadOnlySpan{double}, CellLoss)"/> says of -L, stops and all. A lean is a quarter turn at
/// most, so b - t lies between a half turn back and a quarter turn and L at most B gives b at most t + asin(B / |d|), |d| its least in the cell
/// for B above zero and its most for B below. With t and u those of the cell's centre it closes with the square of the cell; where the
/// centre leans away from the axis t is zero, and it closes all the same, since the lean's own sine is then bounded.
/// </remarks>
internal sealed class LeanObjective(int frameBody, Vector3d axis, Vector3d mark, SweptVector vector) : AxisAngleObjective(frameBody, axis, mark, vector)
{
    private const double QuarterTurnDeg = 90;

    protected override double Degrees(Vector3d d) => Lean(d) * Trigonometry.DegreesPerRadian;

    protected override double Bound(CellGeometry cell, Vector3d centre, CellLoss loss)
    {
        double shortest = View.Least(centre.NormalizedOr(Axis));
        if (!(shortest > CellGeometry.SlackMm)) return -QuarterTurnDeg;
        double trial = Math.Max(0, Lean(centre)), scale = Trigonometry.DegreesPerRadian / shortest, longest = 0, remainder = 0;
        (double sin, double cos) = Trigonometry.SinCos(trial);
        Vector3d against = (sin * Square(centre).NormalizedOr(Axis.AnyPerpendicular())) - (cos * Axis);
        Span<double> remainders = stackalloc double[cell.Dimensions];
        for (int k = 0; k < remainders.Length; k++)
        {
            remainder += View.Remainder(k);
            remainders[k] = View.RemainderBelow(k, against) * scale;
        }

        for (int c = 0; c < cell.CornerCount; c++)
        {
            Vector3d d = View.AtCorner(c);
            Corners[c] = Vector3d.Dot(against, d) * scale;
            longest = Math.Max(longest, d.Length);
        }

        double beyond = -(cell.Bound(Corners.AsSpan(0, cell.CornerCount), remainders, loss) / scale) + CellGeometry.SlackMm;
        double most = trial + Trigonometry.Asin(Math.Clamp(beyond / (beyond > 0 ? shortest : longest + remainder), -1, 1));
        return -Math.Min(QuarterTurnDeg, most * Trigonometry.DegreesPerRadian) - CellGeometry.SlackMm;
    }

    private Vector3d Square(Vector3d d) => d - (Vector3d.Dot(Axis, d) * Axis);

    private double Lean(Vector3d d) => Trigonometry.Atan2(Vector3d.Dot(Axis, d), Square(d).Length);
}
