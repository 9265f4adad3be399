using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Wheels;

/// <summary>The inner faces of a wheel as typed.</summary>
/// <param name="Disc">Empty where nobody measured it.</param>
internal sealed record RimFaces(IReadOnlyList<TypedCorner> Barrel, Placed<LengthReading>? BarrelWall, IReadOnlyList<TypedCorner> Disc, Placed<LengthReading>? DiscWall);
