using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Reading;

/// <summary>What every value of a file shares while it is read.</summary>
/// <param name="Diagnostics">Where faults go.</param>
/// <param name="DefaultUnit">The unit of bare lengths, or null when none is declared.</param>
/// <param name="IsUnitFaulty">Whether the declared unit could not be read, so that bare lengths are passed over in silence.</param>
public sealed record ReadingContext(DiagnosticBag Diagnostics, LengthUnit? DefaultUnit = null, bool IsUnitFaulty = false);
