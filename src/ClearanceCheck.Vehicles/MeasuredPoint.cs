using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles;

/// <summary>A point of the model by its places in the parameter vector; vehicle frame in the measured state.</summary>
public readonly record struct MeasuredPoint(MeasuredLength X, MeasuredLength Y, MeasuredLength Z)
{
    /// <summary>The places of all its numbers.</summary>
    public IEnumerable<int> Indices => X.Indices.Concat(Y.Indices).Concat(Z.Indices);

    /// <summary>True for the mirror image of another point.</summary>
    public bool IsMirrored => X.Deviation is not null;

    /// <summary>Its place in mm for given parameters.</summary>
    public Vector3d At(ReadOnlySpan<double> parameters) => new(X.At(parameters), Y.At(parameters), Z.At(parameters));

    /// <summary>Its mirror image over the centre plane, y to -y: it moves with this point and lies beside its image by a deviation of its own.</summary>
    public MeasuredPoint Mirrored(MeasuredPoint deviation) =>
        new(X with { Deviation = deviation.X.Index }, new MeasuredLength(Y.Index, !Y.IsNegated, deviation.Y.Index), Z with { Deviation = deviation.Z.Index });
}
