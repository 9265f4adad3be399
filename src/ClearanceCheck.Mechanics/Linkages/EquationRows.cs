using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>All equations of a linkage's joints in the measured state, and after them what its soft joints feel.</summary>
internal sealed class EquationRows(Linkage linkage, int coordinates)
{
    private readonly ImmutableArray<Joint> soft = [.. linkage.Joints.Where(j => j.IsSoft)];

    /// <summary>How many rows each joint has: first the equations of all, then what the soft ones feel.</summary>
    public ImmutableArray<int> Groups => [.. linkage.EquationCounts, .. soft.Select(j => SoftRows.Stiffness(j).Length)];

    /// <summary>Derivatives of every row with respect to the bodies' unknowns, row by row.</summary>
    public double[] DerivativesAtStart()
    {
        int unknowns = linkage.BodyUnknowns;
        var matrix = new double[Groups.Sum() * unknowns];
        var at = new Tangent<Real>[unknowns];
        var settings = new Tangent<Real>[coordinates];
        Span<Tangent<Real>> own = stackalloc Tangent<Real>[SoftRows.Most];
        for (int j = 0; j < unknowns; j++)
        {
            at[j] = new Tangent<Real>(default, new Real(1));
            int row = 0;
            Placement<Tangent<Real>> placed = linkage.Place<Tangent<Real>>(linkage.Start, [], at);
            for (int i = 0; i < linkage.Joints.Length; i++)
            {
                int count = linkage.EquationCounts[i];
                if (count > 0) JointEquations.Evaluate(linkage.Joints[i], placed, settings, own);
                for (int k = 0; k < count; k++) matrix[(row++ * unknowns) + j] = own[k].First.Value;
            }

            foreach (Joint joint in soft)
            {
                ImmutableArray<double> stiffness = SoftRows.Stiffness(joint);
                SoftRows.Gives(joint, placed, own);
                for (int k = 0; k < stiffness.Length; k++) matrix[(row++ * unknowns) + j] = stiffness[k] > 0 ? own[k].First.Value : 0;
            }

            at[j] = default;
        }

        return matrix;
    }
}
