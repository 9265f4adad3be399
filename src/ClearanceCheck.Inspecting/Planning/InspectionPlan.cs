using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>Which rules meet which parts: measurements to make, rules that met nothing with the reason, pairs left out because they are meant to touch.</summary>
internal sealed class InspectionPlan
{
    private static readonly string GapId = new GapQuantity().Id;

    private readonly VehicleMotion motion;
    private readonly ImmutableHashSet<string> covered = [];
    private readonly Dictionary<string, PlannedMeasurement> planned = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, ExemptZone> exempt = new(StringComparer.Ordinal);
    private readonly List<NotInspectedItem> below = [];
    private readonly ImmutableArray<UnmatchedRule>.Builder unmatched = ImmutableArray.CreateBuilder<UnmatchedRule>();

    public InspectionPlan(VehicleMotion motion, RuleLibrary library, QuantityCatalogue quantities)
    {
        this.motion = motion;
        // A rule about what no other rule covers has to see the others first.
        foreach (Rule rule in library.Rules.Where(r => !IsForUncovered(r))) Add(rule, quantities.Find(rule.Quantity)!);
        covered = [.. planned.Where(p => p.Value.Quantity.Id == GapId).Select(p => p.Key)];
        foreach (Rule rule in library.Rules.Where(IsForUncovered)) Add(rule, quantities.Find(rule.Quantity)!);
    }

    public ImmutableArray<PlannedMeasurement> Measurements => [.. planned.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value)];

    public ImmutableArray<ExemptZone> Exempt => [.. exempt.Values];

    /// <summary>Parts of which a rule that met others asks nothing: smaller than anything its table names, or without the reading that it is about.</summary>
    public ImmutableArray<NotInspectedItem> LeftOut => [.. below];

    public ImmutableArray<UnmatchedRule> MatchedNothing => unmatched.ToImmutable();

    private void Add(Rule rule, Quantity quantity)
    {
        ImmutableArray<Part> firsts = [.. motion.Vehicle.Parts.Where(rule.Part.Selects)];
        ImmutableArray<Part> seconds = rule.To is null ? [] : [.. motion.Vehicle.Parts.Where(rule.To.Selects)];
        if (firsts.IsEmpty) Unmatched(rule, $"no part of {rule.Part.InWords()} is in the file");
        else if (rule.To is not null && seconds.IsEmpty) Unmatched(rule, $"no part of {rule.To.InWords()} is in the file");
        else ApplyToPairs(rule, quantity, Pairs(firsts, seconds, rule.To is null));
    }

    // Why the rule in hand applies to none of its pairs, each reason once.
    private readonly SortedSet<string> refusals = new(StringComparer.Ordinal);

    // Its parts without the reading that it is about: told where it applies to others.
    private readonly List<NotInspectedItem> unread = [];

    private void ApplyToPairs(Rule rule, Quantity quantity, List<ImmutableArray<Part>> pairs)
    {
        bool applied = false;
        refusals.Clear();
        unread.Clear();
        foreach (ImmutableArray<Part> pair in pairs) applied |= TryApply(rule, quantity, pair);
        if (applied) below.AddRange(unread);
        if (applied) return;
        Unmatched(rule, refusals.Count == 0 ? "its parts are one and the same" : string.Join("; ", refusals));
    }

    private static List<ImmutableArray<Part>> Pairs(ImmutableArray<Part> firsts, ImmutableArray<Part> seconds, bool single) =>
        single
            ? [.. firsts.Select(p => ImmutableArray.Create(p))]
            : [.. firsts.SelectMany(a => seconds.Where(b => b.Id != a.Id).Select(b => ImmutableArray.Create(a, b)))];

    private static bool IsForUncovered(Rule rule) => rule.OnlyWhen.Contains(RuleFacts.Uncovered);

    private bool TryApply(Rule rule, Quantity quantity, ImmutableArray<Part> parts)
    {
        Part first = parts[0];
        Part? second = parts.Length > 1 ? parts[1] : null;
        if (quantity.Refuses(first, second) is { } refused) return Refused($"data missing: {refused}");
        bool isForRead = rule.OnlyWhen.Contains(RuleFacts.Read);
        if (isForRead && quantity.Unread(motion, first) is { } lack) return WithoutReading(rule, first, lack);
        ImmutableArray<Part> subject = [.. parts.OrderBy(p => p.Id, StringComparer.Ordinal)];
        string key = $"{quantity.Id}--{string.Join("--", subject.Select(p => p.Id))}";
        ImmutableSortedSet<string> facts = Facts(first, second, key);
        if (isForRead) facts = facts.Add(RuleFacts.Read);
        // What holds over some poses does not cover the pair: the key of a set is another one.
        if (rule.Over != PoseSet.AllPoses) key += $"--{PoseSetWords.Word(rule.Over)}";
        bool meant = facts.Contains(RuleFacts.MeantContact);
        if (meant) Exempted(parts, "the whole pair", null, "the file says that they are meant to touch");
        // Where contact is meant, a rule has to say that it is about such pairs.
        if (!rule.OnlyWhen.All(facts.Contains)) return Refused($"excluded by only-when: none of its parts is {string.Join(", ", rule.OnlyWhen.Where(w => !facts.Contains(w)))}");
        if (meant && !rule.OnlyWhen.Contains(RuleFacts.MeantContact)) return Refused("excluded by touches: the file says that its parts are meant to touch");
        // A pair of which nothing is known but its bodies is told once, with the part, unless a rule is about such parts.
        if (IsForUncovered(rule) && IsUnread(first, second)) return Refused("data missing: a part has no shape, and no gap to it was read");
        if (Applied(rule, parts, facts) is not { } applied) return Refused("below its table: it asks nothing of a part this small");
        if (second is not null && !meant) ExemptZones(first, second);
        planned[key] = planned.TryGetValue(key, out PlannedMeasurement? known)
            ? known with { Rules = known.Rules.Any(r => r.Rule.Id == rule.Id) ? known.Rules : known.Rules.Add(applied) }
            : new PlannedMeasurement(quantity, subject, facts, [applied]) { Over = rule.Over };
        return true;
    }

    private AppliedRule? Applied(Rule rule, ImmutableArray<Part> parts, ImmutableSortedSet<string> facts)
    {
        (RuleLimit limit, ImmutableArray<string> because) = rule.LimitFor(facts);
        switch (LimitsOfParts.Of(limit, parts[0], motion.Vehicle))
        {
            case LimitForPart.Known known: return new AppliedRule(rule, parts, known.Limit, because);
            case LimitForPart.Missing missing: return new AppliedRule(rule, parts, limit, because) { Missing = missing };
            case LimitForPart.NotCovered small:
                NotInspectedItem item = LimitsOfParts.Below(small, rule, parts[0]);
                if (!below.Contains(item)) below.Add(item);
                return null;
            default: throw new UnreachableException();
        }
    }

    private bool Refused(string why)
    {
        refusals.Add(why);
        return false;
    }

    private bool WithoutReading(Rule rule, Part part, string lack)
    {
        unread.Add(new NotInspectedItem($"{rule.Title}: {part.Name}", lack));
        return Refused($"data missing: {lack}");
    }

    private bool IsUnread(Part first, Part? second) =>
        second is not null && (first.Form is PartForm.Unshaped || second.Form is PartForm.Unshaped)
        && !motion.Vehicle.DirectGaps.Any(g => g.IsBetween(first, second) || g.Covers(first, second));

    private ImmutableSortedSet<string> Facts(Part first, Part? second, string key)
    {
        ImmutableSortedSet<string> facts = [.. first.Facts, .. second?.Facts ?? []];
        if (second is null) return facts;
        if (PairPlan.For(motion, first, second) is not { Module: null }) facts = facts.Add(RuleFacts.Moving);
        if (MeantContact.WholePair(first, second)) facts = facts.Add(RuleFacts.MeantContact);
        if (!covered.Contains(key)) facts = facts.Add(RuleFacts.Uncovered);
        ReadOnlySpan<double> parameters = motion.Parameters.Span;
        bool joined = !MeantContact.Places(first, second, parameters).IsEmpty || !MeantContact.Places(second, first, parameters).IsEmpty;
        return joined ? facts.Add(RuleFacts.Joined) : facts;
    }

    private void ExemptZones(Part first, Part second)
    {
        foreach ((Part held, Part other) in new[] { (first, second), (second, first) })
            foreach (IGrouping<(string Words, double RadiusMm), JoinedPlace> zone in MeantContact.Places(held, other, motion.Parameters.Span).GroupBy(p => (p.Words, p.RadiusMm)))
            {
                string around = $"{(zone.Count() > 1 ? "each" : "the")} {zone.Key.Words} of {held.Name}";
                Exempted([held, other], around, zone.Key.RadiusMm, "it is joined there to the body that the other part is fixed to");
            }
    }

    private void Exempted(ImmutableArray<Part> parts, string around, double? radiusMm, string why)
    {
        ImmutableArray<string> ids = [.. parts.Select(p => p.Id).Order(StringComparer.Ordinal)];
        exempt[string.Join("--", ids) + around] = new ExemptZone(ids, around, radiusMm, why);
    }

    private void Unmatched(Rule rule, string reason) => unmatched.Add(new UnmatchedRule(rule.Id, rule.Title, reason));
}
