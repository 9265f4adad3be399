using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting.Trying;

/// <summary>How something is judged; one of the three outcomes is set.</summary>
/// <param name="IsAccepted">True for a finding that somebody takes the word for, and that counts.</param>
public sealed record JudgedAs(Severity Severity, Verdict? Verdict, ItemOutcome? Item, CoverageOutcome? Expected, bool IsAccepted);
