using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles;

/// <summary>Collects the numbers of a model while it is read.</summary>
public sealed class ParameterVectorBuilder
{
    private readonly ImmutableArray<Parameter>.Builder parameters = ImmutableArray.CreateBuilder<Parameter>();

    public MeasuredLength Length(string path, double valueMm, double halfWidthMm, bool withinIsAssumed)
    {
        parameters.Add(new Parameter(path, valueMm, halfWidthMm, withinIsAssumed));
        return new MeasuredLength(parameters.Count - 1);
    }

    public MeasuredPoint Point(string path, Vector3d valueMm, double halfWidthMm, bool withinIsAssumed) => new(
        Length(path + ".x", valueMm.X, halfWidthMm, withinIsAssumed),
        Length(path + ".y", valueMm.Y, halfWidthMm, withinIsAssumed),
        Length(path + ".z", valueMm.Z, halfWidthMm, withinIsAssumed));

    public ParameterVector Build() => new(parameters.ToImmutable());
}
