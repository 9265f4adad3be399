using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping;

/// <summary>One cell of the pose space as an objective sees it: motions at corners and centre, curvature, stops.</summary>
/// <remarks>
/// The bound and its proof. Let f be n.x for a point x(q) that moves with the pose, over a cell of widths w. With I_k linear
/// interpolation in coordinate k, the I_k commute and each is an average of values in the cell, so f - I_1..I_d f telescopes into
/// terms (f - I_k f), averaged, and each of these is at most M_k w_k^2 / 8, M_k the most by which the second derivative in k lies
/// below zero anywhere in the cell (no mixed derivatives). For fixed n, n.I x is one and the same convex combination of corner
/// values for all points, and supports are maxima over points; hence for any unit n
///     gap >= min over corners of sep_n - sum of M_k w_k^2 / 8.
/// Lengths are convex, so a chord is bounded the same way from its corner values.
/// Stops sharpen it: where a pose is reachable, every reserve r_j is zero or more, so f >= f - sum of m_j r_j for any m_j >= 0, and
/// the right side takes the same corner combination. With the best multipliers (<see cref="StopMultipliers"/>) a least gap that leans
/// on stops closes as fast as one inside the space.
/// </remarks>
internal sealed class CellGeometry
{
    /// <summary>Far above what rounding and the solver's residual can move a point of a vehicle, mm.</summary>
    public const double SlackMm = 1e-6;

    private readonly double[] tilted;
    private readonly double[] estimates;
    private readonly double[] multipliers;
    private readonly double[] leftOver;
    private readonly StopMultipliers program;

    /// <param name="dimensions">Coordinates of the pose space.</param>
    /// <param name="stops">How many stops cut it.</param>
    /// <param name="tracks">How many bodies' motions the objective follows.</param>
    public CellGeometry(int dimensions, int stops, int tracks)
    {
        Dimensions = dimensions;
        CornerCount = 1 << dimensions;
        Tracks = new TrackMotion[tracks];
        for (int t = 0; t < tracks; t++) Tracks[t] = new TrackMotion(CornerCount, dimensions);
        Widths = new double[dimensions];
        StopCorners = new double[stops * CornerCount];
        StopRemainders = new double[stops * dimensions];
        StopReserves = new double[stops];
        StopCount = stops;
        tilted = new double[CornerCount];
        leftOver = new double[dimensions];
        // The last row is for a second direction.
        estimates = new double[(stops + 1) * CornerCount];
        multipliers = new double[stops + 1];
        program = new StopMultipliers(CornerCount, stops + 1);
    }

    public int Dimensions { get; }

    public int CornerCount { get; }

    public int StopCount { get; }

    /// <summary>The motions that the objective follows, in the frame of the search.</summary>
    public TrackMotion[] Tracks { get; }

    /// <summary>The least reserve of any stop at the centre, mm; infinite without stops.</summary>
    public double CentreReserve { get; set; }

    public double[] Widths { get; }

    /// <summary>Upper estimates of each stop's reserve at each corner.</summary>
    public double[] StopCorners { get; }

    /// <summary>For each stop and coordinate, what curvature adds to its estimate.</summary>
    public double[] StopRemainders { get; }

    /// <summary>Each stop's reserve at the centre, mm.</summary>
    public double[] StopReserves { get; }

    /// <summary>No reachable pose of the cell lies below the result, given an objective's values at the corners.</summary>
    /// <param name="corners">The objective at the corners.</param>
    /// <param name="remainders">Its curvature remainder in each coordinate, mm.</param>
    /// <param name="loss">Filled with what each coordinate costs.</param>
    public double Bound(ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders, CellLoss loss)
    {
        double plain = Plain(corners, remainders, loss);
        if (StopCount == 0) return plain;
        FillEstimates();
        return program.Find(corners, estimates.AsSpan(0, StopCount * CornerCount), multipliers.AsSpan(0, StopCount))
            ? Math.Max(plain, Tilted(corners, remainders, default, default, plain, loss))
            : plain;
    }

    /// <summary>As <see cref="Bound(ReadOnlySpan{double}, ReadOnlySpan{double}, CellLoss)"/> for an objective that is nowhere below either of two functions.</summary>
    /// <remarks>
    /// An objective above f and above g is above every average (1 - m) f + m g = f - m (f - g): f - g acts as one more stop, its
    /// multiplier at most one. Where pieces overlap, the way out flips its side, and no single direction can bound the kink well.
    /// </remarks>
    public double Bound(
        ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders, ReadOnlySpan<double> others, ReadOnlySpan<double> otherRemainders, CellLoss loss)
    {
        double plain = Plain(corners, remainders, loss);
        FillEstimates();
        double more = 0;
        for (int k = 0; k < Dimensions; k++) more += otherRemainders[k] - remainders[k];
        Span<double> last = estimates.AsSpan(StopCount * CornerCount, CornerCount);
        for (int c = 0; c < CornerCount; c++) last[c] = corners[c] - others[c] + more;
        if (!program.Find(corners, estimates, multipliers)) return plain;
        multipliers[StopCount] = Math.Min(multipliers[StopCount], 1);
        return Math.Max(plain, Tilted(corners, remainders, others, otherRemainders, plain, loss));
    }

    /// <summary>What each coordinate adds to the uncertainty about a stop that the centre has passed.</summary>
    public void StopLosses(Span<double> loss)
    {
        loss.Clear();
        for (int j = 0; j < StopCount; j++)
        {
            if (!(StopReserves[j] < 0)) continue;
            for (int k = 0; k < Dimensions; k++)
            {
                double sum = 0;
                for (int c = 0; c < CornerCount; c++)
                    sum += (c >> k & 1) != 0 ? StopCorners[(j * CornerCount) + c] : -StopCorners[(j * CornerCount) + c];
                loss[k] += (Math.Abs(sum) / CornerCount) + StopRemainders[(j * Dimensions) + k];
            }
        }
    }

    private double Plain(ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders, CellLoss loss)
    {
        Losses(corners, remainders, loss.Plain);
        loss.Plain.CopyTo(loss.Bound);
        return Lowest(corners, remainders);
    }

    private void FillEstimates()
    {
        for (int j = 0; j < StopCount; j++)
        {
            double remainder = 0;
            for (int k = 0; k < Dimensions; k++) remainder += StopRemainders[(j * Dimensions) + k];
            for (int c = 0; c < CornerCount; c++) estimates[(j * CornerCount) + c] = StopCorners[(j * CornerCount) + c] + remainder;
        }
    }

    // The bound with the multipliers found; "others" is empty or the second function.
    private double Tilted(
        ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders, ReadOnlySpan<double> others, ReadOnlySpan<double> otherRemainders, double plain, CellLoss loss)
    {
        remainders.CopyTo(leftOver);
        corners.CopyTo(tilted);
        double share = others.IsEmpty ? 0 : multipliers[StopCount];
        if (share > 0)
        {
            for (int c = 0; c < CornerCount; c++) tilted[c] = ((1 - share) * corners[c]) + (share * others[c]);
            for (int k = 0; k < Dimensions; k++) leftOver[k] = ((1 - share) * remainders[k]) + (share * otherRemainders[k]);
        }

        for (int j = 0; j < StopCount; j++)
        {
            double m = multipliers[j];
            if (m == 0) continue;
            for (int c = 0; c < CornerCount; c++) tilted[c] -= m * StopCorners[(j * CornerCount) + c];
            for (int k = 0; k < Dimensions; k++) leftOver[k] += m * StopRemainders[(j * Dimensions) + k];
        }

        // A stop's estimate carries the same rounding as the objective, times its multiplier.
        double weight = 0;
        for (int j = 0; j < StopCount; j++) weight += multipliers[j];
        double bound = Lowest(tilted, leftOver) - (weight * SlackMm);
        if (!(bound > plain)) return plain;
        Losses(tilted, leftOver, loss.Bound);
        return bound;
    }

    private double Lowest(ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders)
    {
        double lowest = corners[0];
        for (int c = 1; c < CornerCount; c++) lowest = Math.Min(lowest, corners[c]);
        for (int k = 0; k < Dimensions; k++) lowest -= remainders[k];
        return lowest - SlackMm;
    }

    // Half the mean rise across the cell in each coordinate, and the curvature.
    private void Losses(ReadOnlySpan<double> corners, ReadOnlySpan<double> remainders, Span<double> loss)
    {
        for (int k = 0; k < Dimensions; k++)
        {
            double sum = 0;
            for (int c = 0; c < CornerCount; c++) sum += (c >> k & 1) != 0 ? corners[c] : -corners[c];
            loss[k] = (Math.Abs(sum) / CornerCount) + remainders[k];
        }
    }
}
