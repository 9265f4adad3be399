using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>checks</c>: what was found by hand where a report asked for it, by the finding's id.</summary>
internal static class ChecksReader
{
    private static readonly LengthRange Found = Sizes.Range(0, 2000, "what a hand check finds");

    // A rule and two parts, with what stands between them.
    private const int MostLetters = (3 * IdText.MostLetters) + 4;

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        foreach ((Placed<string> id, Field value) in reader.Optional("checks").Entries(keysAreIds: false) ?? [])
        {
            if (!IsFindingId(id.Value)) FileMessages.NotAFinding(draft.Diagnostics, id);
            else if (value.Mapping(r => ReadCheck(r, id, draft)) is { } check) draft.HandChecks.Add(check);
        }
    }

    private static HandCheck? ReadCheck(MappingReader reader, Placed<string> id, VehicleDraft draft)
    {
        Placed<LengthReading>? found = reader.Required("is", "what was found").Length(Found);
        double? own = Within.Read(reader);
        string? by = reader.Required("by", "who checked it").Text()?.Value;
        string? note = reader.Optional("note").Text()?.Value;
        if (found is null || by is null) return null;
        string path = $"checks/{id.Value}";
        Within within = Within.For(own, null, Defaults.TapedGapMm, "a hand check by tape");
        draft.Remember(path, found.Span);
        draft.Assume(path, within);
        return new HandCheck(id.Value, found.Value.Length.Millimetres, Math.Max(within.HalfWidthMm, found.Value.HalfStepMm), by, note, VehicleDraft.Shown(found.Span.Text));
    }

    // Longer than an id, and made of several of them.
    private static bool IsFindingId(string text) =>
        text.Length <= MostLetters && text.Split("--") is [var rule, _, ..] && IdText.IsId(rule) && text.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-');
}
