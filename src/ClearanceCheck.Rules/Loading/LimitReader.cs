using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads limits and special cases.</summary>
internal sealed class LimitReader(Quantity quantity)
{
    private const string AtLeast = "at-least", AtMost = "at-most";

    // Designed, and not built yet: naming them beats "not a key here".
    private static readonly string[] Later = ["between", "at-least-by", "at-most-own"];

    public RuleLimit? Read(Field field) => field.Mapping(Read);

    /// <summary>The cases, none twice and none that an earlier one hides; null when any is faulty.</summary>
    public ImmutableArray<RuleCase>? ReadCases(Field field)
    {
        if (!field.IsPresent) return [];
        if (field.List(item => item.Mapping(ReadCase)) is not { } read) return null;
        ImmutableArray<RuleCase> cases = [.. read.Value];
        IReadOnlyList<Field> items = field.Items()!;
        bool reachable = true;
        for (int later = 1; later < cases.Length; later++)
        {
            int hiding = Enumerable.Range(0, later).FirstOrDefault(i => cases[i].When.All(f => cases[later].When.Contains(f)), -1);
            if (hiding < 0) continue;
            RuleMessages.CaseNeverTaken(items[later], items[hiding], later + 1, hiding + 1);
            reachable = false;
        }

        return reachable ? cases : null;
    }

    private RuleCase? ReadCase(MappingReader reader)
    {
        ImmutableArray<string>? when = WordsReader.Read(reader.Required("when", "the facts that must all hold"), RuleFacts.All);
        RuleLimit? limit = Read(reader.Required("limit", "the limit that holds then"));
        return when is null || limit is null ? null : new RuleCase(when.Value, limit);
    }

    private RuleLimit? Read(MappingReader reader)
    {
        bool isLater = false;
        foreach (string key in Later.Where(k => reader.Node.Find(k) is not null))
        {
            RuleMessages.KeyNotYet(reader.Optional(key), key, "A limit is `at-least` or `at-most`.");
            isLater = true;
        }

        reader.Allow(AtLeast, AtMost);
        if (isLater) return null;
        if (reader.Has(AtLeast) && reader.Has(AtMost))
        {
            RuleMessages.TwoSides(reader.Optional(AtMost), reader.Optional(AtLeast));
            return null;
        }

        if (!reader.RequireOneOf(AtLeast, AtMost, "the value that is still right")) return null;
        string side = reader.Has(AtLeast) ? AtLeast : AtMost;
        Field field = reader.Optional(side);
        // The measurement bounds the worst side only: a limit on the other side would be judged with a number that bounds nothing.
        bool isJudged = quantity.IsWorstWhenLeast == (side == AtLeast);
        if (!isJudged) RuleMessages.SideNotJudged(field, side, quantity);
        if (ValueReader.Read(field, quantity) is not { } number || !isJudged) return null;
        return side == AtLeast ? new RuleLimit(number, null) : new RuleLimit(null, number);
    }
}
