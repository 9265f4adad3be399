using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>An end of a driveshaft as typed.</summary>
/// <param name="Ahead">A second point on the axis of what its joint is bolted to; null where nobody typed it.</param>
/// <param name="AheadTyped">Where that is typed.</param>
internal sealed record ShaftEndTyped(Place Place, MeasuredPoint? Ahead, Placed<LengthTriple>? AheadTyped);
