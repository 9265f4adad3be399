using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Loading;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Reads one thing that a whole vehicle is expected to have.</summary>
internal static class CoverageReader
{
    private static readonly Dictionary<string, ExpectedFor> Each = new(StringComparer.Ordinal)
    {
        ["vehicle"] = ExpectedFor.Vehicle,
        ["axle"] = ExpectedFor.Axle,
        ["wheel-body"] = ExpectedFor.WheelBody,
    };

    private static readonly ImmutableArray<string> Kinds = [.. PartKinds.All.Select(k => k.Id)];

    /// <summary>The keys of an expectation.</summary>
    public static ImmutableArray<string> Keys { get; } = ["title", "each", "kind", "count", "where", "severity", "consequence", "source"];

    public static IEnumerable<string> EachWords => Each.Keys;

    public static CoverageRow? Read(string id, Field field) => field.Mapping(r => Read(id, r));

    private static CoverageRow? Read(string id, MappingReader reader)
    {
        string? title = reader.Required("title", "what is expected, in words that go behind `no`").Text()?.Value;
        Placed<ExpectedFor>? each = reader.Required("each", "what has it: " + string.Join(", ", Each.Keys)).Choice(Each);
        ImmutableArray<string>? kinds = WordsReader.Read(reader.Required("kind", "kinds of parts that count"), Kinds);
        Field countField = reader.Optional("count"), whereField = reader.Optional("where");
        Placed<int>? count = countField.PositiveInteger();
        ImmutableArray<string>? where = WordsReader.Read(whereField, AxleFacts.All);
        Placed<Severity>? severity = reader.Required("severity", "how grave it is when nobody looked at it").Choice(SeverityWords.All);
        string? consequence = SourceReader.ReadLong(reader.Required("consequence", "what stays unknown without it"));
        RuleSource? source = SourceReader.Read(reader.Required("source", "where the demand comes from"));
        if (each is { Value: ExpectedFor.Vehicle } && whereField.IsPresent) ChecklistMessages.WhereOfVehicle(whereField);
        bool isWhole = title is not null && each is not null && kinds is not null && where is not null && severity is not null && consequence is not null && source is not null;
        if (!isWhole || (countField.IsPresent && count is null)) return null;
        return new CoverageRow(new Expectation(id, each!.Value, kinds!.Value, count?.Value ?? 1, where!.Value), title!, severity!.Value, consequence!, source!);
    }
}
