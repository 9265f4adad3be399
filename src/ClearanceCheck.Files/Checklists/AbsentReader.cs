using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Checklists;

/// <summary>Reads <c>absent</c>: what this vehicle does not have of what the rules expect, or which item does not apply, with the reason.</summary>
internal static class AbsentReader
{
    public static ImmutableArray<Absence> Read(Field field, ImmutableArray<Answer> answers, VehicleDraft draft)
    {
        var all = ImmutableArray.CreateBuilder<Absence>();
        string[]? known = draft.File.Vocabulary is { } words
            ? [.. words.Items.Select(i => i.Id), .. words.Expected.SelectMany(e => e.Slots(draft.Axles, [], null)).Select(s => s.Id)]
            : null;
        foreach ((Placed<string> id, Field value) in field.Entries() ?? [])
        {
            if (known is not null && draft.FaultyAxles.Count == 0 && !known.Contains(id.Value)) FileMessages.NothingExpected(draft.Diagnostics, id, known);
            if (answers.Any(a => a.Item == id.Value)) FileMessages.AnsweredAndAbsent(draft.Diagnostics, id.Span, id.Value);
            if (value.Text() is not { } reason) continue;
            draft.Remember($"absent/{id.Value}", id.Span);
            all.Add(new Absence(id.Value, reason.Value));
        }

        return all.ToImmutable();
    }
}
