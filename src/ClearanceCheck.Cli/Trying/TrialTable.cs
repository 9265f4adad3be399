using System.Text;
using ClearanceCheck.Cli.Rulebook;
using ClearanceCheck.Inspecting.Trying;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Trying;

/// <summary>A trial of rules for people: what flips, one a line, and the decision.</summary>
internal static class TrialTable
{
    public static string Write(RuleTrial trial, RuleLibrary library)
    {
        string[][] rows = [["WHAT", "BEFORE", "WITH THE OVERLAY"], .. trial.Flips.Select(f => new[] { f.Id, TrialWords.Of(f.Before), TrialWords.Of(f.After) })];
        int first = rows.Max(r => r[0].Length), second = rows.Max(r => r[1].Length);
        var text = new StringBuilder();
        if (trial.Flips.IsEmpty) text.Append("No verdict flips.\n");
        else foreach (string[] row in rows) text.Append(row[0].PadRight(first)).Append("  ").Append(row[1].PadRight(second)).Append("  ").Append(row[2]).Append('\n');
        text.Append(FormattableString.Invariant($"{trial.Alike} {(trial.Alike == 1 ? "finding is" : "findings are")} judged the same.")).Append('\n');
        text.Append(trial.Before == trial.After
            ? $"The decision stays: {ReportWords.Decision(trial.After)}.\n"
            : $"The decision changes from {ReportWords.Decision(trial.Before)} to {ReportWords.Decision(trial.After)}.\n");
        return text.Append('\n').Append(RuleCount.Write(library)).ToString();
    }
}
