using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Alignment;

/// <summary>What belongs to an axle is told with its left tire, so that it is told once.</summary>
internal static class AxleOf
{
    /// <summary>Why something of the axle can't be asked of a part.</summary>
    public static string? RefusesAllButLeftTires(Part part, string what) => part.Form switch
    {
        PartForm.Tire { Seat.IsLeft: true } => null,
        PartForm.Tire => $"{what} is told with the left tire of an axle",
        _ => $"{part.Name} is not a tire",
    };
}
