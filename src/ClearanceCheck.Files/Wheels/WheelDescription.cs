using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Wheels;

/// <summary>An axle's wheel as typed; both sides are alike.</summary>
/// <param name="Tire">The tire and what its swept shape is made of.</param>
/// <param name="Offset">The rim's middle plane lies this far inboard of the mounting face.</param>
/// <param name="Rim">The wheel's inner faces; null where nobody measured them.</param>
/// <param name="Within">The half-width typed with the wheel, mm.</param>
internal sealed record WheelDescription(TireDescription Tire, Placed<LengthReading> Offset, RimFaces? Rim, double? Within);
