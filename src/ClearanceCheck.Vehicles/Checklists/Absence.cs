namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>Something expected that this vehicle does not have, or an item that does not apply, with the reason as typed.</summary>
public sealed record Absence(string Id, string Reason);
