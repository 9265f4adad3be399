namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What a person answered to an item of the checklist; every text as typed.</summary>
/// <param name="Item">The item's id.</param>
/// <param name="Value">What was read, with its unit; null where none was typed.</param>
/// <param name="Mark">How it was marked, such as <c>painted</c>; null where it was not.</param>
/// <param name="By">Initials or name.</param>
/// <param name="Note">What else was seen; null when nothing was.</param>
public sealed record Answer(string Item, AnswerOutcome Outcome, string? Value, string? Mark, string By, string? Note);
