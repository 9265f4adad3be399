using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting;

/// <summary>Every reading as typed beside what the model made of it.</summary>
internal static class MeasurementRows
{
    public static ImmutableArray<MeasurementRow> Of(Vehicle vehicle) => [.. vehicle.Readings.Select(r => Row(vehicle.Parameters.Parameters, r))];

    private static MeasurementRow Row(ImmutableArray<Parameter> parameters, TypedReading reading)
    {
        Parameter p = parameters[reading.Parameter];
        Vector3d? point = reading.IsPoint
            ? new Vector3d(p.ValueMm, parameters[reading.Parameter + 1].ValueMm, parameters[reading.Parameter + 2].ValueMm)
            : null;
        return new MeasurementRow(reading.Path, reading.Typed, point, reading.IsPoint ? null : p.ValueMm, p.HalfWidthMm, p.WithinIsAssumed);
    }
}
