using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>Which rules meet which parts: measurements to make, rules that met nothing with the reason, pairs left out because they are meant to touch.</summary>
internal sealed class InspectionPlan
{
    private readonly VehicleMotion motion;
    private readonly Dictionary<string, PlannedMeasurement> planned = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, ExemptZone> exempt = new(StringComparer.Ordinal);
    private readonly ImmutableArray<UnmatchedRule>.Builder unmatched = ImmutableArray.CreateBuilder<UnmatchedRule>();

    public InspectionPlan(VehicleMotion motion, RuleLibrary library, QuantityCatalogue quantities)
    {
        this.motion = motion;
        foreach (Rule rule in library.Rules) Add(rule, quantities.Find(rule.Quantity)!);
    }

    public ImmutableArray<PlannedMeasurement> Measurements => [.. planned.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value)];

    public ImmutableArray<ExemptZone> Exempt => [.. exempt.Values];

    public ImmutableArray<UnmatchedRule> MatchedNothing => unmatched.ToImmutable();

    private void Add(Rule rule, Quantity quantity)
    {
        ImmutableArray<Part> firsts = [.. motion.Vehicle.Parts.Where(rule.Part.Selects)];
        ImmutableArray<Part> seconds = rule.To is null ? [] : [.. motion.Vehicle.Parts.Where(rule.To.Selects)];
        if (firsts.IsEmpty) Unmatched(rule, $"no part of {rule.Part.InWords()} is in the file");
        else if (rule.To is not null && seconds.IsEmpty) Unmatched(rule, $"no part of {rule.To.InWords()} is in the file");
        else ApplyToPairs(rule, quantity, Pairs(firsts, seconds, rule.To is null));
    }

    private void ApplyToPairs(Rule rule, Quantity quantity, List<ImmutableArray<Part>> pairs)
    {
        bool applied = false;
        foreach (ImmutableArray<Part> pair in pairs) applied |= TryApply(rule, quantity, pair);
        if (applied) return;
        Unmatched(rule, rule.OnlyWhen.IsEmpty ? "its parts are left out or have no shape" : $"none of its parts has the fact {string.Join(", ", rule.OnlyWhen)}");
    }

    private static List<ImmutableArray<Part>> Pairs(ImmutableArray<Part> firsts, ImmutableArray<Part> seconds, bool single) =>
        single
            ? [.. firsts.Select(p => ImmutableArray.Create(p))]
            : [.. firsts.SelectMany(a => seconds.Where(b => b.Id != a.Id).Select(b => ImmutableArray.Create(a, b)))];

    private bool TryApply(Rule rule, Quantity quantity, ImmutableArray<Part> parts)
    {
        Part first = parts[0];
        Part? second = parts.Length > 1 ? parts[1] : null;
        if (quantity.Refuses(first, second) is not null) return false;
        ImmutableSortedSet<string> facts = Facts(first, second);
        if (!rule.OnlyWhen.All(facts.Contains)) return false;
        if (second is not null && MeantContact.WholePair(first, second))
        {
            Exempted(parts, "the whole pair", null, "the file says that they are meant to touch");
            return false;
        }

        if (second is not null) ExemptZones(first, second);
        (RuleLimit limit, ImmutableArray<string> because) = rule.LimitFor(facts);
        var applied = new AppliedRule(rule, parts, limit, because);
        ImmutableArray<Part> subject = [.. parts.OrderBy(p => p.Id, StringComparer.Ordinal)];
        string key = $"{quantity.Id}--{string.Join("--", subject.Select(p => p.Id))}";
        planned[key] = planned.TryGetValue(key, out PlannedMeasurement? known)
            ? known with { Rules = known.Rules.Any(r => r.Rule.Id == rule.Id) ? known.Rules : known.Rules.Add(applied) }
            : new PlannedMeasurement(quantity, subject, facts, [applied]);
        return true;
    }

    private ImmutableSortedSet<string> Facts(Part first, Part? second)
    {
        ImmutableSortedSet<string> facts = [.. first.Facts, .. second?.Facts ?? []];
        bool moving = second is not null && PairPlan.For(motion, first.Body, second.Body) is not { Module: null };
        return moving ? facts.Add(RuleFacts.Moving) : facts;
    }

    private void ExemptZones(Part first, Part second)
    {
        if (PairPlan.For(motion, first.Body, second.Body) is not { Module: null }) return;
        foreach ((Part held, Part other) in new[] { (first, second), (second, first) })
            if (MeantContact.RadiusMm(held, motion.Parameters.Span) is { } radius)
                Exempted([held, other], $"each clip of {held.Name}", radius, "a clip holds it to the body that the other part is fixed to");
    }

    private void Exempted(ImmutableArray<Part> parts, string around, double? radiusMm, string why)
    {
        ImmutableArray<string> ids = [.. parts.Select(p => p.Id).Order(StringComparer.Ordinal)];
        exempt[string.Join("--", ids) + around] = new ExemptZone(ids, around, radiusMm, why);
    }

    private void Unmatched(Rule rule, string reason) => unmatched.Add(new UnmatchedRule(rule.Id, rule.Title, reason));
}
