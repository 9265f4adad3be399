using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Loading;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Reads one item. Every fault is reported; whoever loads decides by the faults, not by the value alone.</summary>
internal static class ItemReader
{
    private static readonly Dictionary<string, ChecklistGate> Gates = new(StringComparer.Ordinal)
    {
        [ChecklistWords.BeforeFirstDrive] = ChecklistGate.BeforeFirstDrive,
        [ChecklistWords.AfterFirstDrive] = ChecklistGate.AfterFirstDrive,
    };

    private static readonly ImmutableArray<string> Expects = [ChecklistWords.Ok, ChecklistWords.Value, ChecklistWords.Mark, ChecklistWords.Initials];

    private static readonly ImmutableArray<string> Kinds = [.. PartKinds.All.Select(k => k.Id)];

    /// <summary>The keys of an item.</summary>
    public static ImmutableArray<string> Keys { get; } = ["title", "ask", "severity", "consequence", "family", "gate", "expects", "units", "applies-to", "source"];

    /// <summary>What an item may ask for beside a yes.</summary>
    public static IEnumerable<string> ExpectWords => Expects;

    public static IEnumerable<string> GateWords => Gates.Keys;

    public static ChecklistItem? Read(string id, Field field) => field.Mapping(r => Read(id, r));

    private static ChecklistItem? Read(string id, MappingReader reader)
    {
        string? title = reader.Required("title", "what it is about, in a few words").Text()?.Value;
        string? ask = SourceReader.ReadLong(reader.Required("ask", "what to do and what has to be so, a sentence"));
        Placed<Severity>? severity = reader.Required("severity", "how grave it is: " + string.Join(", ", SeverityWords.All.Keys)).Choice(SeverityWords.All);
        string? consequence = SourceReader.ReadLong(reader.Required("consequence", "what happens when it is not so"));
        Placed<string>? family = reader.Required("family", "what it belongs to: " + string.Join(", ", ChecklistWords.Families)).Word([.. ChecklistWords.Families]);
        Placed<ChecklistGate>? gate = reader.Required("gate", "when it is asked: " + string.Join(", ", Gates.Keys)).Choice(Gates);
        Field expectsField = reader.Optional("expects"), unitsField = reader.Optional("units"), appliesField = reader.Optional("applies-to");
        ImmutableArray<string>? expects = WordsReader.Read(expectsField, Expects), units = WordsReader.Read(unitsField, AnswerUnits.All);
        ItemCondition? applies = appliesField.IsPresent ? appliesField.Mapping(ReadCondition) : new ItemCondition();
        RuleSource? source = SourceReader.Read(reader.Required("source", "where the demand comes from"));
        if (expects is not { } asked || units is not { } known) return null;
        if (asked.Contains(ChecklistWords.Value) && !unitsField.IsPresent) ChecklistMessages.ValueWithoutUnits(expectsField);
        if (!asked.Contains(ChecklistWords.Value) && unitsField.IsPresent) ChecklistMessages.UnitsWithoutValue(unitsField);
        if (title is null || ask is null || severity is null || consequence is null || family is null || gate is null || applies is null || source is null) return null;
        return new ChecklistItem
        {
            Id = id,
            Title = title,
            Ask = ask,
            Severity = severity.Value,
            Consequence = consequence,
            Family = family.Value,
            Gate = gate.Value,
            Units = known,
            NeedsMark = asked.Contains(ChecklistWords.Mark),
            AppliesTo = applies,
            Source = source,
        };
    }

    private static ItemCondition? ReadCondition(MappingReader reader)
    {
        ImmutableArray<string>? kinds = WordsReader.Read(reader.Optional("kind"), Kinds);
        ImmutableArray<string>? axles = WordsReader.Read(reader.Optional("axle"), AxleFacts.All);
        ImmutableArray<string>? fitted = WordsReader.Read(reader.Optional("fitted"), [.. FittedWords.All.Where(w => w != FittedWords.None)]);
        if (reader.Node.Entries.Count == 0) ChecklistMessages.EmptyCondition(reader);
        return kinds is null || axles is null || fitted is null ? null : new ItemCondition { Kinds = kinds.Value, Axles = axles.Value, Fitted = fitted.Value };
    }
}
