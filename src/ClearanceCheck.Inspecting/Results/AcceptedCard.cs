namespace ClearanceCheck.Inspecting.Results;

/// <summary>That somebody takes the word for a finding, and whether that counts. All texts as typed.</summary>
/// <param name="Id">Its id in the inspection file.</param>
/// <param name="Holds">True where it counts; else the finding stands open as if nobody had accepted it.</param>
/// <param name="Floor">The worst value up to which it counts, as typed.</param>
/// <param name="Until">The last day, as <c>2031-10-01</c>.</param>
/// <param name="Void">Why it does not count; null where it does.</param>
public sealed record AcceptedCard(string Id, bool Holds, string Floor, string By, string Until, string Reason, string? Void);
