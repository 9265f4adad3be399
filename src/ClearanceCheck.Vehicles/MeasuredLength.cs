namespace ClearanceCheck.Vehicles;

/// <summary>A length of the model by its place in the parameter vector; a mirrored one by its source's place and its own deviation's.</summary>
/// <param name="Index">Place of its number, or of its source's.</param>
/// <param name="IsNegated">True for a mirror image that lies as far on the other side of zero.</param>
/// <param name="Deviation">Place of what a mirror image lies beside its mirrored source; null for what was measured itself.</param>
public readonly record struct MeasuredLength(int Index, bool IsNegated = false, int? Deviation = null)
{
    /// <summary>The places of all its numbers.</summary>
    public IEnumerable<int> Indices => Deviation is { } own ? [Index, own] : [Index];

    /// <summary>The place of the number that is its own: its deviation's for a mirror image.</summary>
    public int OwnIndex => Deviation ?? Index;

    /// <summary>Its value in mm for given parameters.</summary>
    public double At(ReadOnlySpan<double> parameters)
    {
        double value = IsNegated ? -parameters[Index] : parameters[Index];
        return Deviation is { } own ? value + parameters[own] : value;
    }
}
