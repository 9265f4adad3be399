using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Inspecting.Trying;

/// <summary>What other rules would make of the same vehicle.</summary>
/// <param name="Flips">What is judged otherwise, is new or is no longer asked: findings, then items, then what is expected, each in the order of the ids.</param>
/// <param name="Alike">How many findings are judged the same.</param>
public sealed record RuleTrial(DecisionKind Before, DecisionKind After, ImmutableArray<Flip> Flips, int Alike)
{
    /// <summary>Compares two results of one vehicle.</summary>
    public static RuleTrial Compare(InspectionResult before, InspectionResult after)
    {
        ImmutableArray<Flip> findings = Flipped(FlipKind.Finding, before.Findings, after.Findings, f => f.Id, f => Finding(f), f => f.Title);
        return new RuleTrial(before.Decision.Kind, after.Decision.Kind,
        [
            .. findings,
            .. Flipped(FlipKind.Item, before.Record.Items, after.Record.Items, i => i.Id, i => new JudgedAs(i.Severity, null, i.Outcome, null, false), i => i.Title),
            .. Flipped(FlipKind.Expected, before.Record.Coverage, after.Record.Coverage, c => c.Id, c => new JudgedAs(c.Severity, null, null, c.Outcome, false), c => c.Title),
        ],
        after.Findings.Length - findings.Count(f => f.After is not null));
    }

    private static JudgedAs Finding(Finding finding) => new(finding.Severity, finding.Verdict, null, null, finding.Accepted is { Holds: true });

    private static ImmutableArray<Flip> Flipped<T>(FlipKind kind, IEnumerable<T> before, IEnumerable<T> after, Func<T, string> id, Func<T, JudgedAs> judged, Func<T, string> title)
        where T : class
    {
        Dictionary<string, T> old = before.DistinctBy(id).ToDictionary(id, StringComparer.Ordinal), made = after.DistinctBy(id).ToDictionary(id, StringComparer.Ordinal);
        return
        [
            .. old.Keys.Union(made.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal)
                .Select(key => (Key: key, Old: old.GetValueOrDefault(key), New: made.GetValueOrDefault(key)))
                .Select(p => new Flip(kind, p.Key, title((p.New ?? p.Old)!), p.Old is null ? null : judged(p.Old), p.New is null ? null : judged(p.New)))
                .Where(f => f.Before != f.After),
        ];
    }
}
