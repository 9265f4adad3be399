using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Goes from a solved pose to one beside it with the factors it has: Newton's method with one matrix (chord method).</summary>
/// <remarks>
/// A solution counts only where every step made the residual at least three times smaller: the equations' derivatives on the way are
/// then near those of the start, so no fold lies between, and an energy that had a minimum at the start has one here. Else the caller
/// solves in full.
/// </remarks>
internal static class ChordSolver
{
    private const double Contraction = 0.3;
    private const int MaximumSteps = 16;

    /// <summary>Prepares a solved pose.</summary>
    public static PoseStart StartAt(Linkage linkage, RigidMotion[] bodies, ReadOnlySpan<double> settings)
    {
        int n = linkage.Unknowns, d = settings.Length;
        double[] loads = linkage.LoadsAt(bodies, settings);
        SquareMatrix factor = SquareMatrix.Factor(linkage.Derivatives(bodies, loads, settings), n);
        var slope = new double[n * d];
        double[] right = new double[n], column = new double[n];
        var pose = new Tangent<Real>[d];
        var residual = new Tangent<Real>[n];
        for (int k = 0; k < d; k++)
        {
            for (int i = 0; i < d; i++) pose[i] = new(new Real(settings[i]), new Real(i == k ? 1 : 0));
            linkage.Evaluate(linkage.Place<Tangent<Real>>(bodies, loads, new Tangent<Real>[n]), pose, residual);
            for (int i = 0; i < n; i++) right[i] = -residual[i].First.Value;
            factor.Solve(right, column);
            for (int i = 0; i < n; i++) slope[(i * d) + k] = column[i];
        }

        return new PoseStart(bodies, loads, settings.ToArray(), factor, slope);
    }

    /// <summary>The bodies in a pose beside a start; null where the start's factors don't lead there.</summary>
    /// <param name="linkage">The start's linkage, or one like it that was measured a little differently.</param>
    /// <param name="start">The start.</param>
    /// <param name="settings">The pose.</param>
    public static RigidMotion[]? Solve(Linkage linkage, PoseStart start, ReadOnlySpan<double> settings)
    {
        int n = linkage.Unknowns, d = settings.Length;
        if (start.Slope.Length != n * d || start.Loads.Length != linkage.Loads) return null;
        double[] step = new double[n], residual = new double[n], loads = [.. start.Loads];
        for (int i = 0; i < n; i++)
            for (int k = 0; k < d; k++) step[i] += start.Slope[(i * d) + k] * (settings[k] - start.Settings[k]);
        RigidMotion[] bodies = new RigidMotion[start.Bodies.Length], next = new RigidMotion[start.Bodies.Length];
        Move(linkage, start.Bodies, loads, step, 1, bodies);
        double size = linkage.Residual(bodies, loads, settings, residual);
        for (int i = 0; i < MaximumSteps; i++)
        {
            bool isSettled = size < LinkageSolver.ResidualMm;
            start.Factor.Solve(residual, step);
            Move(linkage, bodies, loads, step, -1, next);
            double after = linkage.Residual(next, loads, settings, residual);
            // At the last digits a step may gain nothing.
            if (isSettled) return WithoutContradiction(linkage, after < size ? next : bodies, settings);
            if (!(after < Contraction * size)) return null;
            (bodies, next, size) = (next, bodies, after);
        }

        return null;
    }

    private static void Move(Linkage linkage, RigidMotion[] from, double[] loads, double[] step, double share, RigidMotion[] to)
    {
        Displacement.Apply(linkage, from, step, share, to);
        for (int i = 0; i < loads.Length; i++) loads[i] += share * step[linkage.BodyUnknowns + i];
    }

    private static RigidMotion[]? WithoutContradiction(Linkage linkage, RigidMotion[] bodies, ReadOnlySpan<double> settings) =>
        linkage.LargestUnused(bodies, settings) > LinkageSolver.RedundancyMm ? null : bodies;
}
