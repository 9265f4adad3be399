using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Checklists;

/// <summary>Reads <c>answers</c>, by the ids of the rules' items.</summary>
internal static class AnswersReader
{
    private static readonly Dictionary<string, AnswerOutcome> Outcomes = new(StringComparer.Ordinal)
    {
        ["ok"] = AnswerOutcome.Ok,
        ["not-ok"] = AnswerOutcome.NotOk,
        ["not-done"] = AnswerOutcome.NotDone,
    };

    public static ImmutableArray<Answer> Read(Field field, VehicleDraft draft)
    {
        var answers = ImmutableArray.CreateBuilder<Answer>();
        foreach ((Placed<string> id, Field value) in field.Entries() ?? [])
        {
            AskedItem? asked = draft.File.Vocabulary?.Items.FirstOrDefault(i => i.Id == id.Value);
            if (draft.File.Vocabulary is { } known && asked is null) FileMessages.NoSuchItem(draft.Diagnostics, id, known.Items.Select(i => i.Id));
            if (value.Mapping(r => ReadAnswer(r, id, asked)) is not { } answer) continue;
            draft.Remember($"answers/{id.Value}", id.Span);
            answers.Add(answer);
        }

        return answers.ToImmutable();
    }

    private static Answer? ReadAnswer(MappingReader reader, Placed<string> id, AskedItem? asked)
    {
        Placed<AnswerOutcome>? outcome = reader.Required("is", "what was found: " + string.Join(", ", Outcomes.Keys)).Choice(Outcomes);
        Field valueField = reader.Optional("value"), markField = reader.Optional("mark");
        string? value = ReadValue(valueField, id.Value, asked), mark = markField.Text()?.Value, by = reader.Required("by", "who looked: initials or name").Text()?.Value;
        string? note = reader.Optional("note").Text()?.Value;
        if (outcome is null || by is null) return null;
        bool isOk = outcome.Value == AnswerOutcome.Ok;
        if (isOk && asked is { Units.IsEmpty: false } && !valueField.IsPresent) FileMessages.AnswerWithoutValue(reader, asked);
        if (isOk && asked is { NeedsMark: true } && !markField.IsPresent) FileMessages.AnswerWithoutMark(reader, asked);
        return new Answer(id.Value, outcome.Value, value, mark, by, note);
    }

    private static string? ReadValue(Field field, string item, AskedItem? asked)
    {
        if (field.Text() is not { } typed) return null;
        if (asked is { Units.IsEmpty: true })
        {
            FileMessages.ValueNotAsked(field, item);
            return null;
        }

        ImmutableArray<string> units = asked?.Units ?? AnswerUnits.All;
        string? unit = units.Where(u => typed.Value.EndsWith(u, StringComparison.Ordinal)).MaxBy(u => u.Length);
        if (unit is not null && QuantityText.ParseNumber(typed.Value[..^unit.Length].Trim()).IsRead) return typed.Value;
        FileMessages.ValueOfAnswer(field, typed.Value, units);
        return null;
    }
}
