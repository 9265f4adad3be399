using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Holds what was found by hand against the findings. A check never clears anything: it can only take a conforming finding back.</summary>
internal sealed class HandChecks(ImmutableArray<HandCheck> checks, double coverageFactor)
{
    // What a pose that was set by hand and a tape held askew may add, mm. A guess.
    private const double BesideMm = 1;

    /// <summary>Whether a check names the finding.</summary>
    public bool Names(Finding finding) => checks.Any(c => c.FindingId == finding.Id);

    /// <summary>The findings with what was found by hand. Rules that look at one measurement share its checks: points that are wrong for one are wrong for all.</summary>
    public IEnumerable<Finding> Apply(ImmutableArray<Finding> findings)
    {
        ILookup<string, (string Id, HandCheck Check)> byMeasured = checks
            .SelectMany(c => findings.Where(f => f.Id == c.FindingId).Take(1).Select(f => (Measured: Measured(f), f.Id, Check: c)))
            .ToLookup(c => c.Measured, c => (c.Id, c.Check), StringComparer.Ordinal);
        return findings.Select(f => byMeasured[Measured(f)].OrderBy(c => c.Id != f.Id).Aggregate(f, (applied, c) => Apply(applied, f, c.Check)));
    }

    private Finding Apply(Finding applied, Finding finding, HandCheck check)
    {
        if (!IsInMillimetres(finding)) return finding;
        string found = Found(check);
        if (finding.Evidence is not { } evidence) return Told(applied, $"{found}; the model gave no value to expect.");
        string expected = Expected(finding, evidence);
        if (Contradicts(check, finding, evidence))
        {
            string subject = finding.Parts.Length > 1 ? "this pair" : "this part";
            return TakenBack(
                Told(applied, $"{found}; {expected}, so the points of {subject} are wrong somewhere: measure them again."),
                $"{Mm(check.FoundMm)} was found by hand where {expected}: measure the points of {subject} again");
        }

        Finding agreed = Told(applied, $"{found}; {expected}.");
        return Misses(check, finding.Limit)
            ? TakenBack(agreed, $"{Mm(check.FoundMm)} was found by hand, and that does not meet the limit: check it again in this pose, and mend it if it is so")
            : agreed;
    }

    /// <summary>The checks that could not be held against anything, and why.</summary>
    public IEnumerable<Assumption> NotUsed(ImmutableArray<Finding> findings)
    {
        foreach (HandCheck check in checks)
        {
            Finding? named = findings.FirstOrDefault(f => f.Id == check.FindingId);
            if (named is not null && IsInMillimetres(named)) continue;
            string why = named is null ? "this inspection has no such finding" : $"that finding is in {named.Quantity.Unit}, not in mm";
            yield return new Assumption($"checks/{check.FindingId}", $"The hand check of {check.Typed} by {check.By} was not used: {why}.");
        }
    }

    private static string Measured(Finding finding) => $"{finding.Quantity.Id} {string.Join(' ', finding.Parts.Select(p => p.Id).Order(StringComparer.Ordinal))}";

    private static Finding Told(Finding finding, string sentence) => finding with { Checked = finding.Checked is { } before ? $"{before} {sentence}" : sentence };

    private static bool IsInMillimetres(Finding finding) => finding.Quantity.Unit == "mm";

    private static Finding TakenBack(Finding finding, string missing) =>
        finding.Verdict == Verdict.Conforms ? finding with { Verdict = Verdict.Undecided, Missing = missing } : finding;

    private bool Contradicts(HandCheck check, Finding finding, Evidence evidence)
    {
        double own = check.HalfWidthMm / Math.Sqrt(3);
        double apart = (coverageFactor * Math.Sqrt((evidence.StandardUncertainty * evidence.StandardUncertainty) + (own * own))) + BesideMm;
        // No tape reads an overlap: what the model lets overlap is found to touch.
        double delta = check.FoundMm - Math.Max(0, evidence.Value);
        return IsAtLeast(finding) ? -delta > apart : Math.Abs(delta) > apart;
    }

    private static bool Misses(HandCheck check, LimitCard limit) => check.FoundMm < limit.Least || check.FoundMm > limit.Most;

    // Of a bound by reading and travel nobody has found that it comes so near: more is no contradiction.
    private static bool IsAtLeast(Finding finding) => finding is { Basis: FindingBasis.ReadingAndTravel, Verdict: Verdict.Conforms };

    private static string Found(HandCheck check) =>
        $"By hand {Mm(check.FoundMm)} ({LengthFormat.Inches(Length.FromMillimetres(check.FoundMm))}) was found, by {check.By}" + (check.Note is { } note ? $" ({note})" : "");

    private static string Expected(Finding finding, Evidence evidence) =>
        evidence.Value <= 0 ? "contact was expected" : $"{(IsAtLeast(finding) ? "at least " : "")}{Mm(evidence.Value)} was expected";

    private static string Mm(double mm) => NumberFormat.UpTo(mm, 1) + " mm";
}
