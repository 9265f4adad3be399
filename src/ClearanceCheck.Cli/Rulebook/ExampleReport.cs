using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Rulebook;

/// <summary>What the examples of rules say: those that lie keep their rule from loading and are told there; here, what the others leave open.</summary>
internal static class ExampleReport
{
    /// <summary>The report, and whether every rule of the base library is pinned by its examples. In a shop's rules what is not pinned is a note.</summary>
    public static (string Text, bool IsPinned) Write(RuleLibrary library)
    {
        var text = new StringBuilder();
        bool isPinned = true;
        string baseLayer = $"{BaseLibrary.Name} ";
        int examples = 0;
        foreach (Rule rule in library.Rules)
        {
            examples += rule.Examples.Length;
            ImmutableArray<string> open = RuleExamples.Unpinned(rule);
            if (open.IsEmpty) continue;
            bool isOfBase = rule.Origins.All(o => o.Layer.StartsWith(baseLayer, StringComparison.Ordinal));
            isPinned &= !isOfBase;
            text.Append(isOfBase ? "error: " : "note: ").Append(rule.Id).Append(" is not pinned: no example notices ").AppendJoin("; ", open.Select(VisibleText.Sentence)).Append(".\n");
        }

        text.Append(FormattableString.Invariant($"{examples} examples of {library.Rules.Length} rules hold.")).Append('\n');
        return (text.Append(RuleCount.Write(library)).ToString(), isPinned);
    }
}
