namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>Something missing or provisional; every text as typed, none trusted.</summary>
public sealed record TemporaryCard(string Id, string What, string MustNot, string Until, string By);
