using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads limits and special cases.</summary>
internal sealed class LimitReader(Quantity quantity)
{
    private const string AtLeast = "at-least", AtMost = "at-most", Between = "between", AtLeastBy = "at-least-by", AtMostOwn = "at-most-own";

    private static readonly string[] Forms = [AtLeast, AtMost, Between, AtLeastBy, AtMostOwn];

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
        reader.Allow(Forms);
        string[] typed = [.. Forms.Where(f => reader.Node.Find(f) is not null)];
        if (typed is [var first, var second, ..])
        {
            LimitMessages.TwoForms(reader.Optional(second), second, reader.Optional(first), first, quantity.BoundsBothSides);
            return null;
        }

        if (typed is not [var form])
        {
            // Only when nothing of it is misspelt: a misspelt key is told with the right one.
            if (reader.Node.Entries.Count == 0) LimitMessages.NoForm(reader, Forms);
            else reader.Required(quantity.IsWorstWhenLeast ? AtLeast : AtMost, "the value that is still right");
            return null;
        }

        Field field = reader.Optional(form);
        if (!IsJudged(field, form)) return null;
        return form switch
        {
            AtLeast => ValueReader.Read(field, quantity) is { } least ? new RuleLimit(least, null) : null,
            AtMost => ValueReader.Read(field, quantity) is { } most ? new RuleLimit(null, most) : null,
            Between => ReadBetween(field),
            AtLeastBy => field.Mapping(ReadSteps),
            _ => PropertyReader.ReadOwn(field, quantity) is { } own ? RuleLimit.By(new PartLimit.Own(own.Id)) : null,
        };
    }

    // A measurement bounds the worst side, and of some quantities both: a limit on another side would be judged with a number that bounds nothing.
    private bool IsJudged(Field field, string form)
    {
        if (quantity.BoundsBothSides) return true;
        bool isOfLeast = form is AtLeast or AtLeastBy, isOfMost = form is AtMost or AtMostOwn;
        if (quantity.IsWorstWhenLeast ? isOfLeast : isOfMost) return true;
        // A value that can't be read is told as well: both have to be mended.
        if (form is AtLeast or AtMost) ValueReader.Read(field, quantity);
        RuleMessages.SideNotJudged(field, form, quantity);
        return false;
    }

    private RuleLimit? ReadBetween(Field field)
    {
        if (field.Items(2) is not { } ends) return null;
        double? least = ValueReader.Read(ends[0], quantity), most = ValueReader.Read(ends[1], quantity);
        if (least is null || most is null) return null;
        if (least < most) return RuleLimit.Between(least.Value, most.Value);
        LimitMessages.NothingBetween(field, QuantityWords.Value(least.Value, quantity), QuantityWords.Value(most.Value, quantity));
        return null;
    }

    private RuleLimit? ReadSteps(MappingReader reader)
    {
        PartProperty? property = PropertyReader.ReadWord(reader.Required("property", "what of the part sets the limit"));
        Field stepsField = reader.Required("steps", "pairs of a size and the limit from that size on");
        if (property is null || stepsField.Items() is not { } items) return null;
        var table = ImmutableArray.CreateBuilder<LimitStep>();
        bool isFaulty = false;
        foreach (Field item in items)
        {
            if (ReadStep(item, property) is not { } step) isFaulty = true;
            else if (table.Count > 0 && step.From <= table[^1].From)
            {
                LimitMessages.StepsNotOrdered(item, table.Count + 1);
                isFaulty = true;
            }
            else table.Add(step);
        }

        return isFaulty ? null : RuleLimit.By(new PartLimit.Steps(property.Id, table.ToImmutable()));
    }

    private LimitStep? ReadStep(Field item, PartProperty property)
    {
        if (item.Items(2) is not { } pair) return null;
        double? from = PropertyReader.ReadValue(pair[0], property), limit = ValueReader.Read(pair[1], quantity);
        return from is null || limit is null ? null : new LimitStep(from.Value, limit.Value);
    }
}
