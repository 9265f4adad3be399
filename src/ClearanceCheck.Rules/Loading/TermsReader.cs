using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads how a rule decides (<c>decision</c>, <c>floor</c>) and on what terms its findings may be accepted (<c>accept</c>).</summary>
internal sealed class TermsReader(Quantity quantity)
{
    // A year and a day: what holds longer than that is no exception but a rule of the shop's own.
    private const int MostDays = 366;

    private const string Guarded = "guarded", Simple = "simple";

    public static void Allow(MappingReader reader) => reader.Allow("decision", "floor", "accept");

    /// <summary>The rule with its terms; null when they are faulty.</summary>
    public Rule? Read(MappingReader reader, Rule rule)
    {
        Field decision = reader.Optional("decision"), floorField = reader.Optional("floor"), acceptField = reader.Optional("accept");
        string? word = decision.Word([Guarded, Simple])?.Value;
        double? floor = null;
        bool isFaulty = decision.IsPresent && word is null;
        if (word == Simple) isFaulty |= !ReadFloor(reader, decision, rule, out floor);
        else if (floorField.IsPresent && !isFaulty)
        {
            LimitMessages.FloorWithoutSimple(floorField);
            isFaulty = true;
        }

        RuleAcceptance? accept = acceptField.Mapping(r => ReadAccept(r, rule));
        if (isFaulty || (acceptField.IsPresent && accept is null)) return null;
        return rule with { Floor = floor, Accept = accept };
    }

    private bool ReadFloor(MappingReader reader, Field decision, Rule rule, out double? floor)
    {
        Field field = reader.Required("floor", "the value that must hold with its give or take");
        floor = ValueReader.Read(field, quantity);
        if (rule.Severity == Severity.Danger) LimitMessages.SimpleDanger(decision);
        else if (rule.Source.Basis is not (SourceReader.CommonPractice or SourceReader.Shop)) LimitMessages.SimpleFact(decision, rule.Source.Basis);
        else if (rule.Limits.Any(l => l.Sides.Length > 1)) LimitMessages.SimpleTwoSides(decision);
        else if (floor is not { } value) return false;
        else if (rule.Limits.FirstOrDefault(l => !IsLooser(value, l, orAt: false)) is { } limit) LimitMessages.FloorNotLooser(field, QuantityWords.Limit(limit, quantity));
        else return true;
        return false;
    }

    private RuleAcceptance? ReadAccept(MappingReader reader, Rule rule)
    {
        Field floorField = reader.Required("floor", "the worst value that may be accepted"), daysField = reader.Required("days", "for how many days at most");
        double? floor = ValueReader.Read(floorField, quantity);
        int? days = daysField.PositiveInteger()?.Value;
        if (days > MostDays)
        {
            LimitMessages.TooManyDays(daysField, MostDays);
            days = null;
        }

        if (floor is null || days is null) return null;
        if (rule.Limits.Any(l => l.Sides.Length > 1))
        {
            LimitMessages.AcceptTwoSides(floorField);
            return null;
        }

        if (rule.Limits.FirstOrDefault(l => !IsLooser(floor.Value, l, orAt: true)) is not { } limit) return new RuleAcceptance(floor.Value, days.Value);
        LimitMessages.AcceptFloorStricter(floorField, QuantityWords.Limit(limit, quantity));
        return null;
    }

    private static bool IsLooser(double floor, RuleLimit limit, bool orAt) => limit switch
    {
        // What a part can take is not known here; every finding is held against it again.
        { OfPart: PartLimit.Own } => true,
        { OfPart: PartLimit.Steps steps } => steps.Table.All(s => IsBelow(floor, s.Limit, orAt)),
        { AtLeast: { } least } => IsBelow(floor, least, orAt),
        _ => IsBelow(-floor, -limit.Number, orAt),
    };

    private static bool IsBelow(double floor, double limit, bool orAt) => orAt ? floor <= limit : floor < limit;
}
