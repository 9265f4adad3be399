using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>First and second derivatives of all bodies' places in a solved pose, from the factorised equations.</summary>
/// <remarks>
/// With F(u(s), s) = 0: F_u u_i = -F_i, and F_u u_ii = -h, where h is the second derivative of F along (u_i, e_i) with u_ii left out.
/// Both right sides come from evaluating the same equations with derivatives.
/// </remarks>
internal static class LinkageDerivatives
{
    /// <summary>The jets of all bodies along one coordinate.</summary>
    public static MotionJet<Real>[] Along(Linkage linkage, RigidMotion[] bodies, ReadOnlySpan<double> settings, int coordinate)
    {
        int n = linkage.Unknowns;
        double[] loads = linkage.LoadsAt(bodies, settings);
        SquareMatrix jacobian = SquareMatrix.Factor(linkage.Derivatives(bodies, loads, settings), n);
        Span<double> right = new double[n], first = new double[n], second = new double[n];
        var unknowns = new Taylor2<Real>[n];
        Evaluate(linkage, bodies, loads, settings, coordinate, unknowns, right, secondOrder: false);
        jacobian.Solve(right, first);
        for (int i = 0; i < n; i++) unknowns[i] = new Taylor2<Real>(default, new Real(first[i]), default);
        Evaluate(linkage, bodies, loads, settings, coordinate, unknowns, right, secondOrder: true);
        jacobian.Solve(right, second);
        for (int i = 0; i < n; i++) unknowns[i] = unknowns[i] with { Second = new Real(second[i]) };
        var jets = new MotionJet<Real>[bodies.Length];
        jets[0] = MotionJet<Real>.Still;
        for (int body = 1; body < bodies.Length; body++)
            jets[body] = MotionJet<Real>.Of(linkage, linkage.Place<Taylor2<Real>>(bodies, loads, unknowns), body);
        return jets;
    }

    private static void Evaluate(
        Linkage linkage, RigidMotion[] bodies, double[] loads, ReadOnlySpan<double> settings, int coordinate, Taylor2<Real>[] unknowns, Span<double> right, bool secondOrder)
    {
        var pose = new Taylor2<Real>[settings.Length];
        for (int i = 0; i < pose.Length; i++) pose[i] = new Taylor2<Real>(new Real(settings[i]), new Real(i == coordinate ? 1 : 0), default);
        var residual = new Taylor2<Real>[linkage.Unknowns];
        linkage.Evaluate(linkage.Place<Taylor2<Real>>(bodies, loads, unknowns), pose, residual);
        for (int i = 0; i < residual.Length; i++) right[i] = -(secondOrder ? residual[i].Second.Value : residual[i].First.Value);
    }
}
