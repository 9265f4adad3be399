using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Reading;

/// <summary>What a length can be at all; outside of it somebody mistyped.</summary>
/// <param name="Least">The least length that is taken.</param>
/// <param name="Most">The greatest length that is taken.</param>
/// <param name="What">What the length is, as in "out of range for {What}".</param>
public sealed record LengthRange(Length Least, Length Most, string What)
{
    /// <summary>A coordinate of a place on a vehicle: within 15 m of zero. Common practice, no source.</summary>
    public static LengthRange PlaceOnVehicle { get; } = new(Length.FromMillimetres(-15_000), Length.FromMillimetres(15_000), "a place on a vehicle");

    /// <summary>A size that has to be there: above zero up to 15 m. Common practice, no source.</summary>
    public static LengthRange SizeOnVehicle { get; } = new(Length.FromMillimetres(0.001), Length.FromMillimetres(15_000), "a size on a vehicle");

    /// <summary>A half-width or an allowance, zero included: up to 1 m. Common practice, no source.</summary>
    public static LengthRange Allowance { get; } = new(Length.Zero, Length.FromMillimetres(1_000), "a give-or-take");

    internal bool Holds(Length length) => length >= Least && length <= Most;
}
