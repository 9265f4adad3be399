using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Why a rule is changed or switched off, who says so, and until when.</summary>
/// <param name="Until">The last day on which it counts.</param>
internal sealed record ChangeReasons(string? Because, string? By, DateOnly? Until)
{
    private const string BecauseKey = "because", ByKey = "by", UntilKey = "until";

    public static ChangeReasons Read(MappingReader reader) => new(
        reader.Optional(BecauseKey).Text()?.Value, reader.Optional(ByKey).Text()?.Value, reader.Optional(UntilKey).Date()?.Value);

    /// <summary>What of a change is a field of the rule.</summary>
    public static IEnumerable<MappingEntry> FieldsOf(MappingNode change) => change.Entries.Where(e => e.Key.Text is not (BecauseKey or ByKey or UntilKey));

    /// <summary>The keys that are needed to ask less than the rule below, and are not there.</summary>
    public IEnumerable<string> Missing
    {
        get
        {
            if (Because is null) yield return BecauseKey;
            if (By is null) yield return ByKey;
            if (Until is null) yield return UntilKey;
        }
    }

    /// <summary>True when the day has passed; without a day of the inspection every dated change is past it.</summary>
    public bool IsPast(DateOnly? today) => Until is { } until && (today is null || until < today);
}
