namespace ClearanceCheck.Units;

/// <summary>A length as somebody typed it.</summary>
/// <param name="Length">The length.</param>
/// <param name="HalfStepMm">Half of the last digit or fraction step that was typed, in mm: <c>12.5 mm</c> gives 0.05, <c>31-5/8 in</c> gives 1.5875.
/// It says how finely the value was read, not how well it was aimed.</param>
/// <param name="Unit">The unit it was typed in; feet and inches together count as inches.</param>
public readonly record struct LengthReading(Length Length, double HalfStepMm, LengthUnit Unit);
