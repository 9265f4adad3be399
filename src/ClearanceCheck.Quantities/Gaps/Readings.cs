using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>Direct readings of the model as they stand beside a measurement.</summary>
internal static class Readings
{
    public static DirectReading Of(MeasureRequest request, DirectGap direct) => new(
        direct.Id, direct.State, direct.Reading.At(request.Motion.Parameters.Span), StandardUncertaintyMm(request.Motion.Vehicle, direct.Reading))
    {
        IsOfParts = direct.IsBetween(request.First, request.Second!),
    };

    private static double StandardUncertaintyMm(Vehicle vehicle, MeasuredLength length) =>
        Math.Sqrt(length.Indices.Sum(i => vehicle.Parameters.Parameters[i].StandardUncertaintyMm * vehicle.Parameters.Parameters[i].StandardUncertaintyMm));
}
