using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Forms;

/// <summary>A corner of a profile as typed.</summary>
internal sealed record TypedCorner(Field Field, Placed<LengthReading> Radius, Placed<LengthReading> Along)
{
    public double RadiusMm => Radius.Value.Length.Millimetres;

    public double AlongMm => Along.Value.Length.Millimetres;
}
