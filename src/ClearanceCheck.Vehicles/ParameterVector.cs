using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>All numbers of the model in a fixed order; independent of each other: what is mirrored or placed is a function of them, and nothing is adjusted yet.</summary>
public sealed class ParameterVector(ImmutableArray<Parameter> parameters)
{
    private readonly double[] nominal = [.. parameters.Select(p => p.ValueMm)];

    public ImmutableArray<Parameter> Parameters => parameters;

    public int Count => parameters.Length;

    /// <summary>The values as measured.</summary>
    public ReadOnlySpan<double> Nominal => nominal;

    /// <summary>The values with one changed by some mm.</summary>
    public double[] Shifted(int index, double byMm)
    {
        double[] values = [.. nominal];
        values[index] += byMm;
        return values;
    }
}
