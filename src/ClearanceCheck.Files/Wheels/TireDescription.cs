using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Files.Wheels;

/// <summary>A tire as typed.</summary>
/// <param name="Size">The size on its sidewall; null where only measured figures were typed.</param>
/// <param name="Circumference">Around the tread, measured: wins over the size.</param>
/// <param name="Width">Section width at the bulge, measured: wins over the size.</param>
/// <param name="RimDiameter">The rim's diameter; typed only where there is no size.</param>
/// <param name="RimWidth">Between the bead seats; null where nobody typed it.</param>
/// <param name="Chains">What chains add all around; null without chains.</param>
internal sealed record TireDescription(
    Placed<TireSize>? Size,
    Placed<LengthReading>? Circumference,
    Placed<LengthReading>? Width,
    Placed<LengthReading>? RimDiameter,
    Placed<LengthReading>? RimWidth,
    Placed<LengthReading>? Chains)
{
    /// <summary>The diameter of the bead seats, mm.</summary>
    public double RimDiameterMm => Size?.Value.RimDiameterMm ?? RimDiameter!.Value.Length.Millimetres;

    /// <summary>The rim's width between the bead seats, typed or usual for the size, mm; null where neither is known.</summary>
    public double? RimWidthMm => RimWidth?.Value.Length.Millimetres ?? Size?.Value.MeasuringRimWidthMm;
}
