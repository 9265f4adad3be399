using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Finds where the bodies are for given settings by Newton's method from a solved pose nearby.</summary>
/// <remarks>
/// Long ways are walked in steps, so that the branch found is the one connected with the start. A step of Newton's is halved while
/// it makes the residuals worse. A solution counts only when its determinant has the measured
/// state's sign (no other branch) and stays clear of a fold; else the answer is "not solved", never "cannot be reached".
/// </remarks>
public sealed class LinkageSolver(Linkage linkage)
{
    // Residuals below this are rounding: points of a vehicle are some thousand mm away, where doubles are 1e-12 mm apart.
    internal const double ResidualMm = 1e-10;
    // Below this a factorisation made a step earlier is as good as a new one; when it gains less than this share, a new one is made.
    private const double ReuseMm = 0.1;
    private const double SlowShare = 1e-2;
    // With a smaller pivot than this, so short a way may still lead over a fold: the solution itself is looked at as well.
    private const double PivotNearAFold = 0.05;
    private const double LongestStepMm = 25;
    // An error of the residual counts one over this in the pose: nearer to a fold 1e-9 mm could not be kept.
    private const double PivotOfAFold = 1e-4;
    // Soft joints make pivots small everywhere: what counts is how much smaller they become.
    private const double ShareOfStartPivot = 1e-3;
    internal const double RedundancyMm = 1e-6;
    private const int MaximumIterations = 25;

    private readonly double[] lengths = linkage.CoordinateLengths;
    private readonly double leastPivot = linkage.IsSoft ? ShareOfStartPivot * linkage.StartPivot : PivotOfAFold;

    public Linkage Linkage => linkage;

    /// <summary>Walks from a solved pose to another; null when the solver could not.</summary>
    /// <param name="from">Where the bodies are.</param>
    /// <param name="fromSettings">The pose there.</param>
    /// <param name="settings">The pose to go to.</param>
    /// <param name="driven">Where driven bodies are there, body by body of the linkage; empty where there are none. On the way they go straight.</param>
    public RigidMotion[]? Solve(ReadOnlySpan<RigidMotion> from, ReadOnlySpan<double> fromSettings, ReadOnlySpan<double> settings, ReadOnlySpan<RigidMotion> driven = default)
    {
        double farthest = 0;
        for (int i = 0; i < settings.Length; i++) farthest = Math.Max(farthest, lengths[i] * Math.Abs(settings[i] - fromSettings[i]));
        int steps = Math.Max(1, (int)Math.Ceiling(farthest / LongestStepMm));
        // What turns or slides is first put back on its own line: the start may be that of a linkage measured a little differently.
        var bodies = new RigidMotion[from.Length];
        Displacement.Apply(linkage, from, new double[linkage.Unknowns], 0, bodies);
        double[] loads = linkage.LoadsAt(bodies, fromSettings);
        var at = new double[settings.Length];
        for (int step = 1; step <= steps; step++)
        {
            double share = (double)step / steps;
            for (int i = 0; i < at.Length; i++)
                at[i] = step == steps ? settings[i] : fromSettings[i] + ((settings[i] - fromSettings[i]) * share);
            if (!driven.IsEmpty) Drive(bodies, from, driven, step == steps ? 1 : share);
            if (!Refine(bodies, loads, at, step == steps)) return null;
        }

        return linkage.LargestUnused(bodies, settings) > RedundancyMm ? null : bodies;
    }

    // What hinges carry goes along with its carrier.
    private void Drive(RigidMotion[] bodies, ReadOnlySpan<RigidMotion> from, ReadOnlySpan<RigidMotion> to, double share)
    {
        RigidMotion[] before = [.. bodies];
        foreach (int body in linkage.Driven)
        {
            Rotation a = from[body].Rotation, b = to[body].Rotation;
            // A quaternion and its negative are one rotation.
            double sign = (a.W * b.W) + (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z) < 0 ? -1 : 1;
            double Mix(double x, double y) => x + (((sign * y) - x) * share);
            bodies[body] = share == 1 ? to[body] : new RigidMotion(
                Rotation.Normalized(Mix(a.W, b.W), Mix(a.X, b.X), Mix(a.Y, b.Y), Mix(a.Z, b.Z)),
                from[body].Translation + ((to[body].Translation - from[body].Translation) * share));
        }

        foreach (int body in linkage.Order)
            if (linkage.Carriages[body] is { Kind: CarriageKind.Turning or CarriageKind.Sliding } carried)
                bodies[body] = bodies[carried.Parent] * (before[carried.Parent].Inverse * before[body]);
    }

    private bool Refine(RigidMotion[] bodies, double[] loads, ReadOnlySpan<double> settings, bool isEnd)
    {
        int n = linkage.Unknowns;
        Span<double> residual = new double[n], step = new double[n];
        double size = linkage.Residual(bodies, loads, settings, residual);
        SquareMatrix? near = null;
        for (int iteration = 0; iteration < MaximumIterations; iteration++)
        {
            // Near the solution the last factorisation still gains several digits a step.
            bool isSettled = size < ResidualMm, looksAtEnergy = isSettled && isEnd && linkage.IsSoft;
            if (near is null || size > ReuseMm || looksAtEnergy || (isSettled && near.SmallestPivot < PivotNearAFold))
            {
                double[] matrix = linkage.Derivatives(bodies, loads, settings);
                if (looksAtEnergy && !linkage.IsStable(matrix)) return false;
                near = SquareMatrix.Factor(matrix, n);
                if (near.SmallestPivot < leastPivot || near.DeterminantIsNegative != linkage.IsMirrored) return false;
            }

            near.Solve(residual, step);
            double before = size;
            if (!Advance(bodies, loads, settings, residual, step, ref size)) return isSettled;
            if (isSettled) return true;
            if (size > ReuseMm || size > SlowShare * before) near = null;
        }

        return false;
    }

    // Takes the largest share of the step that makes the residual smaller; leaves everything as it was when none does.
    private bool Advance(RigidMotion[] bodies, double[] loads, ReadOnlySpan<double> settings, Span<double> residual, ReadOnlySpan<double> step, ref double size)
    {
        RigidMotion[] before = [.. bodies];
        double[] loadsBefore = [.. loads];
        double share = 1;
        for (int halving = 0; halving < 12; halving++, share /= 2)
        {
            Displacement.Apply(linkage, before, step, -share, bodies);
            for (int i = 0; i < loads.Length; i++) loads[i] = loadsBefore[i] - (share * step[linkage.BodyUnknowns + i]);
            double next = linkage.Residual(bodies, loads, settings, residual);
            if (!(next < size)) continue;
            size = next;
            return true;
        }

        before.CopyTo(bodies, 0);
        loadsBefore.CopyTo(loads, 0);
        return false;
    }
}
