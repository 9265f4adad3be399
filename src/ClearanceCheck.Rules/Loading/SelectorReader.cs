using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads which parts a rule is about, and the parts of examples.</summary>
internal static class SelectorReader
{
    private static readonly ImmutableArray<string> KindWords = [.. PartKinds.All.Select(k => k.Id)];

    public static PartSelector? Read(Field field) => field.Mapping(Read);

    public static ExamplePart? ReadExample(Field field) => field.Mapping(ReadExample);

    private static PartSelector? Read(MappingReader reader)
    {
        ImmutableArray<string>? kinds = WordsReader.Read(reader.Optional("kind"), KindWords);
        ImmutableArray<string>? groups = WordsReader.Read(reader.Optional("group"), PartKinds.Groups);
        ImmutableArray<string>? ids = ReadIds(reader.Optional("id"));
        if (reader.Node.Entries.Count == 0) RuleMessages.EmptySelector(reader);
        if (kinds is null || groups is null || ids is null) return null;
        var selector = new PartSelector { Kinds = kinds.Value, Groups = groups.Value, Ids = ids.Value };
        if (PartKinds.All.Any(selector.CouldSelect)) return selector;
        RuleMessages.SelectsNothing(reader, selector);
        return null;
    }

    private static ImmutableArray<string>? ReadIds(Field field)
    {
        if (!field.IsPresent) return [];
        return field.List(item => item.Id()) is { } ids ? [.. ids.Value.Select(i => i.Value).Distinct()] : null;
    }

    private static ExamplePart? ReadExample(MappingReader reader)
    {
        Field kind = reader.Optional("kind"), id = reader.Optional("id");
        string? kindWord = kind.Word(KindWords)?.Value, idWord = id.Id()?.Value;
        bool isFaulty = (kind.IsPresent && kindWord is null) || (id.IsPresent && idWord is null);
        return PropertyReader.ReadAll(reader) is { } properties && !isFaulty ? new ExamplePart(kindWord, idWord) { Properties = properties } : null;
    }
}
