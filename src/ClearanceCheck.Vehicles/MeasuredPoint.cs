using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles;

/// <summary>A point of the model by its places in the parameter vector; vehicle frame in the measured state.</summary>
public readonly record struct MeasuredPoint(MeasuredLength X, MeasuredLength Y, MeasuredLength Z)
{
    /// <summary>Its place in mm for given parameters.</summary>
    public Vector3d At(ReadOnlySpan<double> parameters) => new(X.At(parameters), Y.At(parameters), Z.At(parameters));
}
