using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Recording;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>The decision over all findings, why, and what to do in which order.</summary>
/// <remarks>
/// Held by any danger that fails, is undecided or could not be evaluated, by a rule or item that was not loaded, by a danger that somebody found, and,
/// of a whole vehicle, by a danger that nobody looked at. Conditions by an open warning, a temporary state, an open tightening audit, or a danger that
/// conforms only on something assumed or mirrored. Clear only where the whole vehicle is in scope; a part inspection gives no decision at best.
/// </remarks>
internal static class DecisionBuilder
{
    private const int MostLines = 7;

    public static DecisionCard Build(ImmutableArray<Finding> findings, ImmutableArray<string> notLoaded, RecordCard record)
    {
        ImmutableArray<OpenPoint> points = OpenPoints.Of(record);
        ImmutableArray<Finding> open = [.. findings.Where(f => f.IsOpen)];
        ImmutableArray<Finding> dangers = [.. open.Where(f => f.Severity == Severity.Danger)];
        ImmutableArray<Finding> warnings = [.. open.Where(f => f.Severity == Severity.Warning)];
        ImmutableArray<Finding> resting = [.. findings.Where(f => f is { Severity: Severity.Danger, Verdict: Verdict.Conforms } && !f.Assumes.IsEmpty)];
        ImmutableArray<Finding> accepted = [.. findings.Where(f => f.Accepted is { Holds: true } && f.Severity >= Severity.Warning)];
        DecisionKind kind = !dangers.IsEmpty || !notLoaded.IsEmpty || points.Any(p => p.Holds) ? DecisionKind.Held
            : !warnings.IsEmpty || !resting.IsEmpty || !points.IsEmpty || accepted.Any(f => f.Severity == Severity.Danger) ? DecisionKind.Conditions
            : record.IsWhole ? DecisionKind.Clear
            : DecisionKind.None;
        ImmutableArray<string> reasons =
        [
            .. notLoaded.Select(r => $"Rule not loaded: {r}"),
            .. dangers.Select(Reason),
            .. points.Where(p => p.Holds).Select(p => p.Reason),
            .. warnings.Select(Reason),
            .. points.Where(p => !p.Holds).Select(p => p.Reason),
            .. accepted.Select(f => $"{f.Title} ({Names(f)}): accepted by {f.Accepted!.By} until {f.Accepted.Until}."),
            .. resting.Select(f => $"{f.Title} ({Names(f)}): met only with something that nobody measured. {f.Assumes[0]}"),
        ];
        return new DecisionCard(kind, reasons, [.. Lines(open, resting, notLoaded, points).Take(MostLines)]);
    }

    private static IEnumerable<ActionLine> Lines(ImmutableArray<Finding> open, ImmutableArray<Finding> resting, ImmutableArray<string> notLoaded, ImmutableArray<OpenPoint> points)
    {
        if (!notLoaded.IsEmpty) yield return new ActionLine("Mend the rule library: a rule that is not loaded was not checked.", null);
        ILookup<bool, ActionLine> jobs = open.GroupBy(f => f.Verdict == Verdict.Fails ? Subject(f) : f.Id)
            .ToLookup(same => same.First().Severity == Severity.Danger, same => Line([.. same]));
        foreach (bool holds in new[] { true, false })
        {
            foreach (ActionLine job in jobs[holds]) yield return job;
            foreach (OpenPoint point in points.Where(p => p.Holds == holds)) yield return new ActionLine(point.Action, null);
        }

        foreach (Finding finding in resting) yield return new ActionLine($"{Names(finding)}: {finding.Assumes[0]} Measure it and say how well.", finding.Id);
    }

    // Several rules missed by the same parts are one job: as much as the most demanding asks, done as the gravest says.
    private static ActionLine Line(ImmutableArray<Finding> same)
    {
        Finding gravest = same[0], most = same.MaxBy(Remedies.Lacks)!;
        return new ActionLine(
            gravest.Verdict == Verdict.Fails ? $"{Names(gravest)}:{Sentence(Remedies.Needed(most))}{Sentence(gravest.Advice)}" : Todo(gravest), gravest.Id);
    }

    private static string Subject(Finding finding) => $"{finding.Quantity.Id} {string.Join(' ', finding.Parts.Select(p => p.Id).Order(StringComparer.Ordinal))}";

    private static string Reason(Finding finding) => finding.Verdict switch
    {
        Verdict.Fails => $"{finding.Title} ({Names(finding)}).",
        Verdict.Undecided => $"{finding.Title}: too close to call ({Names(finding)}).",
        _ => $"{finding.Title}: could not be checked ({Names(finding)}).",
    };

    private static string Todo(Finding finding) => finding.Verdict switch
    {
        Verdict.Undecided => $"{Names(finding)}: too close to call; {finding.Missing}.",
        _ => $"{Names(finding)}: could not be checked; {finding.Missing}.",
    };

    private static string Sentence(string? advice) => string.IsNullOrEmpty(advice) ? "" : " " + advice;

    private static string Names(Finding finding) => string.Join(" and ", finding.Parts.Select(p => p.Name));
}
