namespace ClearanceCheck.Vehicles;

/// <summary>What somebody found who checked a finding by hand, in the pose that the report gives.</summary>
/// <param name="FindingId">The finding's id as in the report.</param>
/// <param name="FoundMm">What was found, mm; zero where the two touched.</param>
/// <param name="HalfWidthMm">Half-width of the reading, mm.</param>
/// <param name="By">Who checked, as typed.</param>
/// <param name="Note">What else was seen, as typed; null when nothing was.</param>
/// <param name="Typed">The reading as typed.</param>
public sealed record HandCheck(string FindingId, double FoundMm, double HalfWidthMm, string By, string? Note, string Typed);
