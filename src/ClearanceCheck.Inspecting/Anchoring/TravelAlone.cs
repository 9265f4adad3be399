using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Anchoring;

/// <summary>The verdict on a pair of which nothing is known but a gap that was read and how far the two move.</summary>
/// <remarks>
/// The bound is met or it says nothing: no pose is known that comes so near, so it never fails a pair. Only the reading itself does,
/// where it lies below the limit as it was taken.
/// </remarks>
internal static class TravelAlone
{
    public static Verdict Judge(RuleLimit limit, Measurement measured, double coverageFactor)
    {
        ConformityOutcome gravest = ConformityOutcome.Conforms;
        foreach (WorstPlace place in measured.Places)
            gravest = Conformity.Gravest(gravest, Conformity.Judge(limit, place.Value, measured.Bound, coverageFactor * place.StandardUncertainty));
        if (limit.AtLeast is not null && gravest == ConformityOutcome.Conforms && !measured.Places.Any(p => p.EndsAtNoStop)) return Verdict.Conforms;
        if (TooSmall(limit, measured, coverageFactor) is not null) return Verdict.Fails;
        return Counting(measured) is { TravelMm: 0, IsOfParts: true } && gravest == ConformityOutcome.Undecided ? Verdict.Undecided : Verdict.NotEvaluated;
    }

    /// <summary>The measurement of a pair that fails as it was read: that value, in the pose of its state.</summary>
    public static Measurement AsRead(RuleLimit limit, MeasureRequest request, Measurement measured, double coverageFactor)
    {
        DirectReading read = TooSmall(limit, measured, coverageFactor)!;
        WorstPlace place = measured.Places[0] with
        {
            Value = read.MeasuredMm,
            StandardUncertainty = read.StandardUncertaintyMm,
            Shares = [],
            ActiveStops = [],
            EndsAtNoStop = false,
            Pose = measured.Module is { } module ? [.. StatePose.Of(module, read.State, request.Motion.Parameters.Span)] : [],
        };
        return measured with { Value = read.MeasuredMm, Bound = Math.Min(measured.Bound, read.MeasuredMm), Places = [place] };
    }

    /// <summary>What is needed where reading and travel decide nothing.</summary>
    public static string Needed(RuleLimit limit, Measurement measured, AppliedTo parts, double coverageFactor)
    {
        DirectReading read = Counting(measured);
        Part[] unshaped = [.. new[] { parts.First, parts.Second }.Where(p => p.Form is PartForm.Unshaped)];
        string where = unshaped.Length == 2
            ? $"measure points of {unshaped[0].Name} and of {unshaped[1].Name} where they come near each other"
            : $"measure points of {unshaped[0].Name} near {(unshaped[0] == parts.First ? parts.Second : parts.First).Name}";
        double leaves = Math.Floor(10 * measured.Bound) / 10, giveOrTake = coverageFactor * measured.Places.Max(p => p.StandardUncertainty);
        string whose = read.IsOfParts ? "" : " to anything on the body";
        return $"{where}: {ReadingCards.Read(read)}{whose} less up to {ReadingCards.Mm(Math.Ceiling(10 * read.TravelMm!.Value) / 10)} of travel leaves {ReadingCards.Mm(leaves)}, "
            + $"give or take {ReadingCards.Mm(Math.Ceiling(10 * giveOrTake) / 10)}, and the rule asks for {ReadingCards.Mm(limit.Number)}";
    }

    private static DirectReading Counting(Measurement measured) => measured.Readings.First(r => r.Counts);

    // A reading to a whole body does not say which part of it is that near.
    private static DirectReading? TooSmall(RuleLimit limit, Measurement measured, double coverageFactor) => measured.Readings
        .Where(r => r.IsOfParts && limit.AtLeast is not null
            && Conformity.Judge(limit, r.MeasuredMm, r.MeasuredMm, coverageFactor * r.StandardUncertaintyMm) == ConformityOutcome.Fails)
        .MinBy(r => r.MeasuredMm);
}
