using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>The quantity and the parts as typed; no first part means all parts of the vehicle.</summary>
internal sealed record PartsTyped(Quantity Quantity, Part? First, Part? Second)
{
    /// <summary>Finds them; all faults at once.</summary>
    public static (PartsTyped? Typed, IReadOnlyList<InputFault> Faults) Read(string quantityId, string? firstId, string? secondId, Vehicle vehicle, QuantityCatalogue catalogue)
    {
        var faults = new List<InputFault>();
        Quantity? quantity = catalogue.Find(quantityId);
        if (quantity is null) faults.Add(Unknown("quantity", quantityId, catalogue.All.Select(q => q.Id)));
        Part? first = Find(firstId, vehicle, faults), second = Find(secondId, vehicle, faults);
        if (firstId is null && secondId is not null) faults.Add(new InputFault("There is a second part but no first one.", "Write --first PART as well, or leave both out to see the worst of all parts."));
        if (first is not null && first == second) faults.Add(new InputFault("Both parts are the same one.", "Name two different parts."));
        else if (quantity is not null && first is not null && (secondId is null || second is not null)) Fit(quantity, first, second, faults);
        return faults.Count > 0 ? (null, faults) : (new PartsTyped(quantity!, first, second), faults);
    }

    private static void Fit(Quantity quantity, Part first, Part? second, List<InputFault> faults)
    {
        if (!quantity.IsOfPair && second is not null) faults.Add(new InputFault($"{Capital(quantity.Name)} belongs to one part.", "Leave --second out."));
        else if (quantity.Refuses(first, second) is { } reason) faults.Add(new InputFault($"{Capital(quantity.Name)} can't be asked: {VisibleText.Of(reason)}.", $"It is {quantity.Meaning}."));
    }

    private static Part? Find(string? id, Vehicle vehicle, List<InputFault> faults)
    {
        if (id is null) return null;
        Part? found = vehicle.Parts.FirstOrDefault(p => p.Id == id);
        if (found is null) faults.Add(Unknown("part", id, vehicle.Parts.Select(p => p.Id)));
        return found;
    }

    private static InputFault Unknown(string what, string typed, IEnumerable<string> known) => new(
        $"There is no {what} {VisibleText.Of(typed)}.",
        NearestWord.Find(typed, known) is { } nearest ? $"Did you mean {nearest}?" : $"Known are {string.Join(", ", known)}.");

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
