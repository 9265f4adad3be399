using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>All equations of a set of joints in the measured state, before it is known which are needed.</summary>
internal sealed class EquationRows(int bodies, ImmutableArray<Joint> joints, int coordinates)
{
    public int Count => joints.Sum(j => j.Equations);

    /// <summary>Derivatives of every equation with respect to the six unknowns of each moving body, row by row.</summary>
    public double[] DerivativesAtStart()
    {
        int unknowns = 6 * (bodies - 1);
        var bases = new RigidMotion[bodies];
        Array.Fill(bases, RigidMotion.Identity);
        ImmutableArray<Vector3d> centres = BodyCentres.Of(bodies, joints);
        var matrix = new double[Count * unknowns];
        var at = new Tangent<Real>[unknowns];
        var settings = new Tangent<Real>[coordinates];
        Span<Tangent<Real>> own = stackalloc Tangent<Real>[5];
        for (int j = 0; j < unknowns; j++)
        {
            at[j] = new Tangent<Real>(default, new Real(1));
            int row = 0;
            foreach (Joint joint in joints)
            {
                JointEquations.Evaluate(joint, new Placement<Tangent<Real>>(bases, at, centres.AsSpan()), settings, own);
                for (int k = 0; k < joint.Equations; k++) matrix[(row++ * unknowns) + j] = own[k].First.Value;
            }

            at[j] = default;
        }

        return matrix;
    }
}
