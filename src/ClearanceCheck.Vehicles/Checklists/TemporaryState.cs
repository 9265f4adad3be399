namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>Something that is missing or provisional; every text as typed.</summary>
/// <param name="What">What is missing or provisional.</param>
/// <param name="MustNot">What must not be done until it is mended.</param>
/// <param name="Until">What ends it.</param>
/// <param name="By">Who answers for it.</param>
public sealed record TemporaryState(string Id, string What, string MustNot, string Until, string By);
