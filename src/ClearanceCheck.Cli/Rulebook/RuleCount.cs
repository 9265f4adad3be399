using System.Text;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Rulebook;

/// <summary>How many rules count, in which layers, what was not loaded, and what a shop asks less of.</summary>
internal static class RuleCount
{
    public static string Write(RuleLibrary library)
    {
        var text = new StringBuilder();
        text.Append(FormattableString.Invariant($"{library.Rules.Length} {(library.Rules.Length == 1 ? "rule counts" : "rules count")}: "))
            .AppendJoin(", with ", library.Layers.Select(l => $"{l.Name} {l.Version}")).Append(".\n");
        if (!library.Items.IsEmpty || !library.Coverage.IsEmpty)
            text.Append(FormattableString.Invariant($"{library.Items.Length} {(library.Items.Length == 1 ? "item is" : "items are")} asked of a person, {library.Coverage.Length} {(library.Coverage.Length == 1 ? "thing is" : "things are")} expected of a whole vehicle.")).Append('\n');
        foreach (string sentence in library.NotLoaded) text.Append("Not loaded: ").Append(VisibleText.Sentence(sentence)).Append('\n');
        foreach (RuleChange change in library.Changes.Where(c => c.Kind != RuleChangeKind.Added)) text.Append(Line(change)).Append('\n');
        return text.ToString();
    }

    private static string Line(RuleChange change) => $"{Word(change.Kind)} {change.Rule} ({change.Layer}, {change.Place}){(change.What.IsEmpty ? "" : ": " + VisibleText.Sentence(string.Join("; ", change.What)))}";

    private static string Word(RuleChangeKind kind) => kind switch
    {
        RuleChangeKind.Tightened => "Changed, not loosened:",
        RuleChangeKind.Loosened => "Loosened:",
        RuleChangeKind.SwitchedOff => "Switched off:",
        _ => "Past its day:",
    };
}
