using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Forms;

/// <summary>Tube and rod of a shock as typed.</summary>
/// <param name="Length">The tube's length; null where nobody typed it.</param>
/// <param name="AtUpper">True for a tube at the upper end; null where nobody typed it.</param>
internal sealed record TypedSleeves(Placed<LengthReading> Tube, Placed<LengthReading> Rod, Placed<LengthReading>? Length, bool? AtUpper);
