using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Rules;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Rulebook;

/// <summary>A rule, an item or an expectation as it counts, each field with the file and line it comes from.</summary>
internal static class RuleText
{
    public static (string? Text, InputFault? Fault) Write(RuleLibrary library, string id)
    {
        ImmutableArray<FieldOrigin>? origins = Origins(library, id);
        RuleChange[] changes = [.. library.Changes.Where(c => c.Rule == id)];
        if (origins is null && changes.FirstOrDefault(c => c.Kind == RuleChangeKind.SwitchedOff) is { } off)
            return ($"{id} is switched off by {off.Layer}, {off.Place}.\n{Reasons(off)}", null);
        if (origins is null)
        {
            string? nearest = NearestWord.Find(id, Ids(library));
            return (null, new InputFault($"There is no rule, item or expectation {id}.", nearest is null ? "Run `clearance-check rules list` to see them." : $"Did you mean {nearest}?"));
        }

        var text = new StringBuilder(id).Append('\n');
        foreach (FieldOrigin field in origins.Value)
            text.Append("  ").Append(field.Field).Append(": ").Append(field.Typed).Append("\n      from ").Append(field.Layer).Append(", ").Append(field.Place).Append('\n');
        foreach (RuleChange change in changes.Where(c => c.Kind != RuleChangeKind.Added))
        {
            text.Append(change.Kind == RuleChangeKind.Expired ? "Past its day: " : "Changed by ").Append(change.Layer).Append(", ").Append(change.Place).Append('\n');
            foreach (string what in change.What) text.Append("  ").Append(what).Append('\n');
            text.Append(Reasons(change));
        }

        return (text.ToString(), null);
    }

    private static ImmutableArray<FieldOrigin>? Origins(RuleLibrary library, string id) =>
        library.Rules.FirstOrDefault(r => r.Id == id)?.Origins ?? library.Items.FirstOrDefault(i => i.Id == id)?.Origins ?? library.Coverage.FirstOrDefault(c => c.Expectation.Id == id)?.Origins;

    private static IEnumerable<string> Ids(RuleLibrary library) => [.. library.Rules.Select(r => r.Id), .. library.Items.Select(i => i.Id), .. library.Coverage.Select(c => c.Expectation.Id)];

    private static string Reasons(RuleChange change)
    {
        string signed = string.Join(", ", new[] { change.By, change.Until is { } day ? FormattableString.Invariant($"until {day:yyyy-MM-dd}") : null }.OfType<string>());
        return (change.Because is { } why ? $"  because: {why}\n" : "") + (signed.Length > 0 ? $"  by: {signed}\n" : "");
    }
}
