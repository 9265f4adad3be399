using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>accepted</c>: findings that somebody takes the word for, each bound to its rule, its parts, a floor and a last day.</summary>
internal static class AcceptedReader
{
    private static readonly LengthRange Floors = Sizes.Range(-2000, 15_000, "a floor");

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        foreach ((Placed<string> id, Field value) in reader.Optional("accepted").Entries() ?? [])
        {
            if (value.Mapping(r => ReadOne(r, id, draft)) is not { } accepted) continue;
            if (draft.Accepted.Find(a => a.IsOf(accepted.Rule, accepted.Parts)) is { } first) FileMessages.AcceptedTwice(draft.Diagnostics, id, first.Id);
            else draft.Accepted.Add(accepted);
        }
    }

    private static AcceptedFinding? ReadOne(MappingReader reader, Placed<string> id, VehicleDraft draft)
    {
        string? rule = reader.Required("rule", "the rule whose finding is accepted").Id()?.Value;
        Placed<IReadOnlyList<Placed<string>>>? parts = reader.Required("parts", "the parts of the finding, one or two").List(f => f.Id());
        Field floorField = reader.Required("floor", "the worst value up to which it counts");
        (double Value, string Unit)? floor = ReadFloor(floorField);
        string? by = reader.Required("by", "who accepts it").Text()?.Value;
        DateOnly? until = reader.Required("until", "the last day on which it counts").Date()?.Value;
        string? reason = reader.Required("reason", "why it is accepted").Text()?.Value;
        bool isSound = parts is null || parts.Value.Select(p => IsThere(p, draft)).Aggregate(true, (a, b) => a && b);
        if (rule is null || parts is null || floor is null || by is null || until is null || reason is null || !isSound) return null;
        string typed = VehicleDraft.Shown(floorField.Node!.Span.Text);
        return new AcceptedFinding(id.Value, rule, [.. parts.Value.Select(p => p.Value)], floor.Value.Value, floor.Value.Unit, typed, by, until.Value, reason);
    }

    // What the rule limits is not known here: the unit says what the floor is, and the finding has to have the same.
    private static (double Value, string Unit)? ReadFloor(Field field)
    {
        if (field.Node is ScalarNode share && QuantityText.ParsePercentage(share.Text).IsRead) return field.Percentage() is { } percent ? (percent.Value.Percent, "%") : null;
        if (field.Node is ScalarNode angle && QuantityText.ParseAngle(angle.Text).IsRead) return field.Angle() is { } read ? (read.Value.Degrees, "deg") : null;
        return field.Length(Floors) is { } length ? (length.Value.Length.Millimetres, "mm") : null;
    }

    // The parts that a faulty part or axle would have made are not known.
    private static bool IsThere(Placed<string> part, VehicleDraft draft)
    {
        if (draft.Parts.Exists(p => p.Id == part.Value) || draft.Diagnostics.HasErrors) return true;
        FileMessages.AcceptsNoPart(draft.Diagnostics, part, draft.Parts.Select(p => p.Id));
        return false;
    }
}
