namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>One bushed pivot of the tightening audit.</summary>
/// <param name="Id">The word in <c>tightened</c>: <c>rear-track-bar-frame</c>.</param>
/// <param name="Words">What it is: "rear axle, track bar frame".</param>
/// <param name="By">Who tightened it, as typed; null where nobody did.</param>
/// <param name="Mark">How it was marked, as typed; null where it was not.</param>
public sealed record PivotCard(string Id, string Axle, string Words, PivotOutcome Outcome, string? By, string? Mark);
