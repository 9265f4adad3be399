using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads one rule and runs its examples. Every fault is reported; whoever loads decides by the faults, not by the value alone.</summary>
internal sealed class RuleReader(QuantityCatalogue quantities)
{
    /// <summary>The keys of a rule; an overlay may change any of them but what the rule is about.</summary>
    public static ImmutableArray<string> Keys { get; } =
    [
        "title", "severity", "consequence", "quantity", "part", "to", "only-when", "over", "limit", "cases", "decision", "floor", "accept", "source", "advice", "hand-check", "recheck", "examples",
    ];

    /// <summary>What a rule limits.</summary>
    public Quantity Quantity(Rule rule) => quantities.Find(rule.Quantity)!;

    public Rule? Read(string id, Field field) => field.Mapping(reader => Read(id, reader));

    private Rule? Read(string id, MappingReader reader)
    {
        Quantity? quantity = ReadQuantity(reader.Required("quantity", "what is limited: " + string.Join(", ", QuantityWords)));
        Field severityField = reader.Required("severity", "how grave it is: " + string.Join(", ", SeverityWords.All.Keys));
        Placed<Severity>? severity = severityField.Choice(SeverityWords.All);
        PartSelector? part = SelectorReader.Read(reader.Required("part", "which parts it is about"));
        Field toField = quantity is { IsOfPair: true }
            ? reader.Required("to", $"{quantity.Name} is measured between two parts, and this is the other one")
            : reader.Optional("to");
        PartSelector? to = SelectorReader.Read(toField);
        if (quantity is { IsOfPair: false }) RuleMessages.ToWithoutPair(toField, quantity);
        RuleSource? source = SourceReader.Read(reader.Required("source", "where the limit comes from"));
        if (source?.Basis == SourceReader.CommonPractice && severity?.Value == Severity.Danger) RuleMessages.DangerOnAGuess(severityField);
        PoseSet over = ReadOver(reader.Optional("over"));
        TermsReader.Allow(reader);
        Rule? limited = ReadLimits(reader, quantity);
        Rule? said = ReadWords(id, reader);
        if (limited is null || said is null || severity is null || part is null || source is null || (quantity!.IsOfPair && to is null)) return null;
        Rule rule = said with
        {
            Severity = severity.Value,
            Quantity = quantity.Id,
            Over = over,
            Part = part,
            To = to,
            OnlyWhen = limited.OnlyWhen,
            Limit = limited.Limit,
            Cases = limited.Cases,
            Source = source,
        };
        return new TermsReader(quantity).Read(reader, rule) is { } whole ? ReadExamples(reader.Optional("examples"), whole, quantity) : null;
    }

    private IEnumerable<string> QuantityWords => quantities.All.Select(q => q.Id);

    private Quantity? ReadQuantity(Field field) => field.Word([.. QuantityWords]) is { } word ? quantities.Find(word.Value) : null;

    // All poses where the key is left out.
    private static PoseSet ReadOver(Field field) => field.Word([.. PoseSetWords.Sets.Keys]) is { } word ? PoseSetWords.Sets[word.Value] : PoseSet.AllPoses;

    /// <summary>Facts, limit and cases in a rule that says nothing else; null when any is faulty or the quantity is not known.</summary>
    private static Rule? ReadLimits(MappingReader reader, Quantity? quantity)
    {
        Field whenField = reader.Optional("only-when"), limitField = reader.Required("limit", "the value that is still right, such as `{ at-least: 25 mm }`"), casesField = reader.Optional("cases");
        reader.Allow("examples");
        ImmutableArray<string>? onlyWhen = WordsReader.Read(whenField, RuleFacts.All);
        if (quantity is null) return null;
        var limits = new LimitReader(quantity);
        RuleLimit? limit = limits.Read(limitField);
        ImmutableArray<RuleCase>? cases = limits.ReadCases(casesField);
        if (onlyWhen is null || limit is null || cases is null) return null;
        return Bare with { OnlyWhen = onlyWhen.Value, Limit = limit, Cases = cases.Value };
    }

    private Rule? ReadWords(string id, MappingReader reader)
    {
        ImmutableArray<string>? recheck = WordsReader.Read(reader.Optional("recheck"), [.. QuantityWords]);
        Rule said = Bare with
        {
            Id = id,
            Title = reader.Optional("title").Text()?.Value ?? InWords(id),
            Consequence = reader.Optional("consequence").Text()?.Value,
            Advice = reader.Optional("advice").Text()?.Value,
            HandCheck = reader.Optional("hand-check").Text()?.Value,
        };
        return recheck is null ? null : said with { Recheck = recheck.Value };
    }

    private static Rule? ReadExamples(Field field, Rule rule, Quantity quantity)
    {
        if (new ExampleReader(quantity).Read(field) is not { } examples) return null;
        for (int i = 0; i < examples.Count; i++)
        {
            ExampleOutcome found = RuleExamples.Outcome(rule, examples[i]);
            if (found != examples[i].Expect) RuleMessages.ExampleLies(field.Items()![i], rule, examples[i], found, quantity);
        }

        return rule with { Examples = [.. examples] };
    }

    /// <summary>A rule that says nothing yet, to be filled.</summary>
    private static Rule Bare => new()
    {
        Id = "",
        Title = "",
        Severity = Severity.Notice,
        Quantity = "",
        Part = new PartSelector(),
        Limit = new RuleLimit(0, null),
        Source = new RuleSource(SourceReader.Shop, SourceReader.None, ""),
    };

    private static string InWords(string id)
    {
        string words = id.Replace('-', ' ').Trim();
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
