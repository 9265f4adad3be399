namespace ClearanceCheck.Vehicles;

/// <summary>A length of the model by its place in the parameter vector.</summary>
public readonly record struct MeasuredLength(int Index)
{
    /// <summary>Its value in mm for given parameters.</summary>
    public double At(ReadOnlySpan<double> parameters) => parameters[Index];
}
