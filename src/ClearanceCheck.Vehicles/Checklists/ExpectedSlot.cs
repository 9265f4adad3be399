namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>A place that an expectation asks to be filled.</summary>
/// <param name="Id">The word in <c>absent</c>: <c>front-knuckle-left-brake-hose</c>.</param>
/// <param name="Axle">The axle; null for the vehicle.</param>
/// <param name="Body">The wheel body; null where the whole axle counts.</param>
public sealed record ExpectedSlot(string Id, string? Axle, string? Body)
{
    /// <summary>True for a part that lies or ends there.</summary>
    public bool Holds(Part part) => Axle is null || Bodies(part).Any(b => Body is null ? b.StartsWith(Axle + "/", StringComparison.Ordinal) : b == Body);

    private static IEnumerable<string> Bodies(Part part) => part.Form.Ends.Select(e => e.Body).Append(part.Body);
}
