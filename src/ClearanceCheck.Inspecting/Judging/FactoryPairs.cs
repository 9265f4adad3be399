using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Pairs of original parts that do not move against each other: the lift did not change their gap.</summary>
/// <remarks>
/// A rule that asks them for a distance is not judged, and the pair is listed as factory arrangement; whether they touch is judged all the same.
/// Where the give or take reaches contact, the finding stays, too close to call.
/// </remarks>
internal sealed class FactoryPairs(ImmutableArray<PlannedMeasurement> planned)
{
    /// <summary>The findings of a measurement that count.</summary>
    /// <param name="findings">All of the measurement.</param>
    /// <param name="measurement">Its number in the plan.</param>
    public IEnumerable<Finding> Judged(ImmutableArray<Finding> findings, int measurement) =>
        IsFactory(planned[measurement]) ? findings.Where(f => !IsListed(f)).Select(Contact) : findings;

    /// <summary>The pairs that were not judged, each once.</summary>
    public IEnumerable<ExemptZone> Listed(IReadOnlyList<ImmutableArray<Finding>> findings)
    {
        for (int i = 0; i < planned.Length; i++)
        {
            if (!IsFactory(planned[i]) || findings[i].FirstOrDefault(IsListed) is not { Evidence: { } evidence }) continue;
            yield return new ExemptZone(
                [.. planned[i].Subject.Select(p => p.Id).Order(StringComparer.Ordinal)],
                "the whole pair",
                null,
                $"factory arrangement: both are original and do not move against each other; {Words.Length(evidence.Value)} apart as measured, so they do not touch, and no more is asked of them");
        }
    }

    private static bool IsFactory(PlannedMeasurement planned) =>
        planned.Subject.Length == 2 && planned.Subject.All(p => p.IsOriginal) && !planned.Facts.Contains(RuleFacts.Moving);

    private static bool AsksForDistance(Finding finding) => finding is { Quantity.Id: "gap", Limit.AtLeast: > 0, Evidence: not null };

    private static bool IsListed(Finding finding) =>
        AsksForDistance(finding) && Math.Min(finding.Evidence!.Value, finding.Evidence.Bound) - finding.Evidence.GiveOrTake >= 0;

    // Less than a distance and more than contact is what was not to be judged.
    private static Finding Contact(Finding finding) =>
        AsksForDistance(finding) && finding.Verdict == Verdict.Fails && finding.Evidence!.Value + finding.Evidence.GiveOrTake >= 0
            ? finding with { Verdict = Verdict.Undecided, Missing = "both are original and do not move against each other, and they may touch: look whether they do" }
            : finding;
}
