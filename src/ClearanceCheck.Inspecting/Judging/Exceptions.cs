using System.Collections.Immutable;
using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Holds accepted findings against the findings. An exception counts only while its day, its floor and the rule's terms all hold.</summary>
internal sealed class Exceptions(Vehicle vehicle, RuleLibrary library, DateOnly? today)
{
    /// <summary>The findings with what was accepted of them.</summary>
    public IEnumerable<Finding> Apply(IEnumerable<Finding> findings) => findings.Select(f => Of(f) is { } accepted && f.Verdict != Verdict.Conforms ? f with { Accepted = Card(accepted, f) } : f);

    /// <summary>The exceptions that no open finding needs, and why.</summary>
    public IEnumerable<Assumption> NotUsed(ImmutableArray<Finding> findings)
    {
        foreach (AcceptedFinding accepted in vehicle.Accepted)
        {
            Finding? finding = findings.FirstOrDefault(f => Of(f) == accepted);
            if (finding is { Verdict: not Verdict.Conforms }) continue;
            string why = finding is null ? "this inspection has no such finding" : "the finding meets its limit";
            yield return new Assumption($"accepted/{accepted.Id}", $"The accepted finding of {accepted.Rule} by {accepted.By} was not used: {why}. Take it out.");
        }
    }

    private AcceptedFinding? Of(Finding finding) => vehicle.Accepted.FirstOrDefault(a => a.IsOf(finding.Rule, finding.Parts.Select(p => p.Id)));

    private AcceptedCard Card(AcceptedFinding accepted, Finding finding)
    {
        string? why = Void(accepted, finding);
        return new AcceptedCard(accepted.Id, why is null, accepted.FloorTyped, accepted.By, Day(accepted.Until), accepted.Reason, why);
    }

    private string? Void(AcceptedFinding accepted, Finding finding)
    {
        if (library.Rules.FirstOrDefault(r => r.Id == finding.Rule)?.Accept is not { } terms) return "its rule lets nothing be accepted";
        if (accepted.Unit != finding.Quantity.Unit) return $"its floor is in {accepted.Unit}, and the finding in {finding.Quantity.Unit}";
        if (today is not { } day || accepted.Until < day) return $"it counted until {Day(accepted.Until)}";
        if (accepted.Until.DayNumber - day.DayNumber > terms.Days) return FormattableString.Invariant($"its rule lets a finding be accepted for {terms.Days} days at most, and this one runs for {accepted.Until.DayNumber - day.DayNumber} more");
        bool isUpper = finding.Limit.AtLeast is null;
        double sign = isUpper ? -1 : 1;
        if (sign * (accepted.Floor - terms.Floor) < 0) return $"its rule lets nothing {(isUpper ? "above" : "below")} {Shown(terms.Floor, finding)} be accepted, and its floor is {accepted.FloorTyped}";
        return BelowFloor(accepted, finding, isUpper, sign);
    }

    // The worst that the gap may be: no pose goes past the bound, and the give or take of every place is counted against it.
    private string? BelowFloor(AcceptedFinding accepted, Finding finding, bool isUpper, double sign)
    {
        if (finding.Evidence is not { } evidence) return "the finding could not be checked";
        if (finding.WorsensBeyondTravel) return "it gets worse up to the end of the travel looked at, and nothing stops the wheel there";
        double giveOrTake = evidence.CoverageFactor * evidence.Basins.Select(b => b.StandardUncertainty).Append(evidence.StandardUncertainty).Max();
        double worst = evidence.Bound - (sign * giveOrTake);
        if (sign * (worst - accepted.Floor) < 0)
            return $"with its give or take it may be as {(isUpper ? "much" : "little")} as {Shown(worst, finding)}, and its floor is {accepted.FloorTyped}";
        HandCheck? check = vehicle.HandChecks.FirstOrDefault(c => c.FindingId == finding.Id && finding.Quantity.Unit == "mm" && sign * (c.FoundMm - accepted.Floor) < c.HalfWidthMm);
        return check is null ? null : $"{check.Typed} was found by hand, which does not clear its floor of {accepted.FloorTyped}";
    }

    private static string Shown(double value, Finding finding) => $"{NumberFormat.UpTo(value, 1)} {finding.Quantity.Unit}";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
