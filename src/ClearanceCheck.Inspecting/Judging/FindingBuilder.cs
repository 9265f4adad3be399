using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Anchoring;
using ClearanceCheck.Inspecting.Evidencing;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Makes a rule's finding from its measurement.</summary>
internal sealed class FindingBuilder(Vehicle vehicle, EvidenceBuilder evidence, Shields shields, double coverageFactor)
{
    // An assumed reading that carries less than this of the variance is not worth a line.
    private const double ShareThatMatters = 0.1;

    /// <summary>The findings of all rules on one measurement.</summary>
    public ImmutableArray<Finding> Build(PlannedMeasurement planned, MeasureRequest request, Measurement whole)
    {
        // Two rules on one pair show the same evidence: it is drawn and plotted once.
        var known = new List<(string First, Measurement Shown, Evidence Evidence)>();
        return [.. planned.Rules.Select(rule => Build(planned, rule, request, whole, shown => Evidence(rule, shown)))];

        Evidence Evidence(AppliedRule rule, Measurement shown)
        {
            string first = rule.Parts[0].Id;
            foreach ((string First, Measurement Shown, Evidence Evidence) same in known)
                if (same.First == first && ReferenceEquals(same.Shown, shown)) return same.Evidence;
            Evidence made = evidence.Build(planned, rule, request, shown);
            known.Add((first, shown, made));
            return made;
        }
    }

    private Finding Build(PlannedMeasurement planned, AppliedRule applied, MeasureRequest request, Measurement whole, Func<Measurement, Evidence> evidenceOf)
    {
        Rule rule = applied.Rule;
        (RuleLimit limit, ImmutableArray<string> because, ImmutableArray<string> said) = Limit(planned, applied, whole);
        (RuleLimit side, Measurement measured, Verdict verdict) = limit.OfPart is not null
            ? (limit, whole, Verdict.NotEvaluated)
            : Sides.Deciding(limit, planned.Quantity, whole, (one, extreme) => Judge(rule, one, extreme));
        Measurement shown = verdict == Verdict.Fails && IsTravelAlone(measured) ? TravelAlone.AsRead(side, request, measured, coverageFactor) : measured;
        string subject = "--" + string.Join("--", planned.Subject.Select(p => p.Id));
        bool isListed = verdict == Verdict.Conforms && !vehicle.HandChecks.Any(c => c.FindingId.EndsWith(subject, StringComparison.Ordinal));
        return new Finding
        {
            Id = rule.Id + subject,
            Rule = rule.Id,
            Title = rule.Title,
            Severity = rule.Severity,
            Verdict = verdict,
            Consequence = rule.Consequence,
            Advice = rule.Advice,
            HandCheck = rule.HandCheck,
            Recheck = rule.Recheck,
            Parts = [.. applied.Parts.Select(p => new PartCard(p.Id, p.Name, p.Kind.Id, p.Body))],
            Quantity = new QuantityCard(planned.Quantity.Id, planned.Quantity.Name, Meaning(planned), Unit(planned.Quantity)),
            Limit = Card(rule, limit, side, because),
            Source = new SourceCard(rule.Source.Basis, rule.Source.Known, rule.Source.Text),
            Evidence = verdict != Verdict.NotEvaluated ? Drawn(evidenceOf(shown), isListed) : null,
            Missing = Missing(verdict, side, applied, measured),
            Assumes = [.. Assumes(measured), .. MirroredReadings.Matter(vehicle, measured, ShareThatMatters), .. AssumedPlace(measured)],
            Shields = said,
            WorsensBeyondTravel = EndsAtNoStop(measured),
            Basis = ReadingCards.Basis(measured.Basis),
            Direct = ReadingCards.Of(measured, coverageFactor),
        };
    }

    // What meets its limit is listed and not drawn: its pieces would only make the report heavy. A hand check may yet contradict it.
    private static Evidence Drawn(Evidence evidence, bool isListed) => !isListed
        ? evidence
        : evidence with { Drawing = new DrawingCard([.. evidence.Drawing.Parts.Select(p => p with { Pieces = [] })]) };

    // Whether a shield stands between the two can only be seen where they come nearest.
    private (RuleLimit Limit, ImmutableArray<string> Because, ImmutableArray<string> Said) Limit(PlannedMeasurement planned, AppliedRule applied, Measurement measured)
    {
        bool asks = applied.Rule.Cases.Any(c => c.When.Contains(RuleFacts.Shielded));
        if (!asks || measured.NotEvaluated is not null || IsTravelAlone(measured)) return (applied.Limit, applied.Because, []);
        (bool holds, ImmutableArray<string> said) = shields.Between(planned.Subject, measured);
        if (!holds) return (applied.Limit, applied.Because, said);
        (RuleLimit limit, ImmutableArray<string> because) = applied.Rule.LimitFor(planned.Facts.Add(RuleFacts.Shielded));
        return LimitsOfParts.Of(limit, applied.Parts[0], vehicle) is LimitForPart.Known known ? (known.Limit, because, said) : (applied.Limit, applied.Because, said);
    }

    public static string Unit(Quantity quantity) => QuantityUnitText.Of(quantity.Unit);

    // Every reachable pose is what a meaning speaks of; another set is told with it.
    private static string Meaning(PlannedMeasurement planned) =>
        planned.Over == PoseSet.AllPoses ? planned.Quantity.Meaning : $"{planned.Quantity.Meaning}; looked at {PoseSetWords.Where(planned.Over)}";

    private static LimitCard Card(Rule rule, RuleLimit limit, RuleLimit side, ImmutableArray<string> because) => new(side.AtLeast, side.AtMost, because)
    {
        Other = limit is { AtLeast: { } least, AtMost: { } most } ? side.AtLeast is null ? least : most : null,
        Floor = rule.Floor,
        By = rule.Limits.Select(l => l.OfPart?.Property).OfType<string>().Select(word => PartProperties.Find(word)!.Name).FirstOrDefault(),
    };

    // The bound holds for all places, so it is judged with each place's own give or take: the least of (bound - U) decides.
    private Verdict Judge(Rule rule, RuleLimit limit, Measurement measured)
    {
        if (measured.NotEvaluated is not null) return Verdict.NotEvaluated;
        if (IsTravelAlone(measured)) return TravelAlone.Judge(limit, measured, coverageFactor);
        ConformityOutcome gravest = ConformityOutcome.Conforms;
        foreach (WorstPlace place in measured.Places)
            gravest = Conformity.Gravest(gravest, rule.Judge(limit, place.Value, measured.Bound, coverageFactor * place.StandardUncertainty));
        return gravest switch
        {
            ConformityOutcome.Conforms when EndsAtNoStop(measured) => Verdict.Undecided,
            ConformityOutcome.Conforms => Verdict.Conforms,
            ConformityOutcome.Fails => Verdict.Fails,
            _ => Verdict.Undecided,
        };
    }

    private static bool IsTravelAlone(Measurement measured) => measured.Basis == MeasurementBasis.ReadingAndTravel;

    private static bool EndsAtNoStop(Measurement measured) => measured.Places.Any(p => p.EndsAtNoStop);

    private string? Missing(Verdict verdict, RuleLimit limit, AppliedRule applied, Measurement measured) => verdict switch
    {
        Verdict.NotEvaluated when applied.Missing is { } property => LimitsOfParts.Needed(property, applied.Parts[0]),
        Verdict.NotEvaluated when measured.NotEvaluated is { } why => why,
        Verdict.NotEvaluated when !EndsAtNoStop(measured) => TravelAlone.Needed(limit, measured, new AppliedTo(applied.Parts[0], applied.Parts[1]), coverageFactor),
        Verdict.NotEvaluated or Verdict.Undecided when EndsAtNoStop(measured) =>
            "it gets worse up to the end of the travel looked at, and nothing in the file stops the wheel there; measure and type the shock or bump stop that does",
        Verdict.Undecided when measured.BudgetSpent => "the search ended before its bound was close enough",
        Verdict.Undecided when measured.Places[0].Shares is [var most, ..] =>
            $"measure {Words.Reading(vehicle, most.Reading)} again, or this value itself in this pose",
        Verdict.Undecided => "measure this value itself in this pose",
        _ => null,
    };

    private static IEnumerable<string> AssumedPlace(Measurement measured)
    {
        if (measured.AssumesBetweenPointsOf is { } part)
            yield return $"{part.Name} is taken to lie between the points measured on {part.Body}: what of it lies outside them may move farther.";
    }

    private ImmutableArray<string> Assumes(Measurement measured)
    {
        if (measured.Places.IsEmpty) return [];
        ImmutableHashSet<string> assumed = [.. vehicle.Parameters.Parameters.Where(p => p.WithinIsAssumed).Select(p => p.Reading)];
        return
        [
            .. measured.Places[0].Shares
                .Where(s => s.Share >= ShareThatMatters && assumed.Contains(s.Reading))
                .Select(s => $"The give or take of {Words.Reading(vehicle, s.Reading)} was not typed: {NumberText.Short(s.HalfWidthMm)} mm each way was assumed."),
        ];
    }
}
