using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Puts single changes of an overlay on the rules below. A change that can't be used leaves the rule below as it is, and that is said.</summary>
internal sealed class OverlayChanges(OverlayHeader overlay, LayeredRules counting, RuleReader reader, DateOnly? today, DiagnosticBag diagnostics)
{
    private const string Examples = "examples";

    private string Layer => $"{overlay.Name.Value} {overlay.Version.Value}";

    public void Twice(MappingEntry entry, MappingEntry first) => Refuse(entry, OverlayMessages.Twice(entry.Key, first.Key));

    /// <summary>Says that an entry was left out for its faults.</summary>
    public void NotLoaded(MappingEntry entry, IReadOnlyList<Documents.Diagnostic> faults)
    {
        string id = VisibleText.Of(entry.Key.Text);
        string what = counting.KnownIds.Contains(entry.Key.Text)
            ? $"What {overlay.Name.Value} makes of {id} was not loaded and the rule below it counts"
            : $"{id} was not loaded";
        counting.NotLoaded.Add(RuleFaults.Sentence(what, entry, faults));
    }

    /// <summary>Puts one entry.</summary>
    /// <param name="below">The ids of the layers below.</param>
    public void Apply(OverlayEntry read, IReadOnlySet<string> below)
    {
        if (read.Own is not null) Add(read, read.Own, below);
        else if (!below.Contains(read.Id)) Refuse(read.Entry, OverlayMessages.NoSuchRule(read.Entry.Key, read.Section, below));
        else if (counting.Find(read.Id) is { } counts)
        {
            if (read.Section == OverlayEntry.Change) Change(read, counts);
            else SwitchOff(read, counts);
        }
        else counting.NotLoaded.Add($"What {overlay.Name.Value} makes of {read.Id} has nothing to stand on: that rule does not count.");
    }

    private void Add(OverlayEntry read, CountingEntry own, IReadOnlySet<string> below)
    {
        if (below.Contains(read.Id))
        {
            Refuse(read.Entry, OverlayMessages.RuleBelow(read.Entry.Key));
            return;
        }

        counting.KnownIds.Add(read.Id);
        counting.Entries.Add(counting.WithOrigins(own));
        counting.Changes.Add(Card(read, own, RuleChangeKind.Added));
    }

    private void Change(OverlayEntry read, CountingEntry below)
    {
        // The examples below speak of the rule below; the overlay's own speak of what comes out.
        MappingNode node = below.Node.Overlaid(read.Fields, Examples);
        var faults = new DiagnosticBag();
        CountingEntry? merged = Read(below, new Field(node, new ReadingContext(faults)));
        diagnostics.AddRange(faults.Ordered);
        if (merged is null || faults.HasErrors)
        {
            NotLoaded(read.Entry, [.. faults.Ordered.Where(d => d.Severity == Documents.Severity.Error)]);
            return;
        }

        CountingEntry made = counting.WithOrigins(merged with { Node = node });
        ImmutableArray<string> looser = [.. Looser(below, made)];
        if (!IsAllowed(read, below, !looser.IsEmpty, string.Join("; ", looser))) return;
        counting.Entries[counting.Entries.IndexOf(below)] = made;
        counting.Changes.Add(Card(read, below, looser.IsEmpty ? RuleChangeKind.Tightened : RuleChangeKind.Loosened) with
        {
            What = [.. read.Fields.Where(f => f.Key.Text != Examples).Select(f => Difference(f, below.Node))],
            Looser = looser,
        });
    }

    private CountingEntry? Read(CountingEntry below, Field node) => below switch
    {
        CountingRule rule => reader.Read(rule.Id, node) is { } made ? rule with { Rule = made } : null,
        CountingItem item => ItemReader.Read(item.Id, node) is { } made ? item with { Item = made } : null,
        CountingRow row => CoverageReader.Read(row.Id, node) is { } made ? row with { Row = made } : null,
        _ => throw new UnreachableException(),
    };

    private IEnumerable<string> Looser(CountingEntry below, CountingEntry made) => (below, made) switch
    {
        (CountingRule before, CountingRule after) => RuleComparison.Looser(before.Rule, after.Rule, reader.Quantity(after.Rule)),
        (CountingItem before, CountingItem after) => ChecklistComparison.Looser(before.Item, after.Item),
        (CountingRow before, CountingRow after) => ChecklistComparison.Looser(before.Row, after.Row),
        _ => throw new UnreachableException(),
    };

    private void SwitchOff(OverlayEntry read, CountingEntry below)
    {
        if (read.Reasons!.Because is null)
        {
            Refuse(read.Entry, OverlayMessages.SwitchOffWithoutReason(read.Entry.Key));
            return;
        }

        if (!IsAllowed(read, below, below.Severity >= Severity.Warning, "switched off")) return;
        counting.Entries.Remove(below);
        counting.SwitchedOff.Add(below);
        counting.Changes.Add(Card(read, below, RuleChangeKind.SwitchedOff) with { Looser = ["switched off"] });
    }

    // Asking less than the rule below needs a reason, a name and a day; whatever has a day counts up to it.
    private bool IsAllowed(OverlayEntry read, CountingEntry below, bool needsAll, string what)
    {
        if (needsAll && read.Reasons!.Missing.ToArray() is { Length: > 0 } missing)
        {
            Refuse(read.Entry, OverlayMessages.LooseningNeeds(read.Entry.Key, what, missing));
            return false;
        }

        if (!read.Reasons!.IsPast(today)) return true;
        diagnostics.Add(OverlayMessages.PastItsDay(read.Entry.Key, read.Section, read.Reasons.Until!.Value, today));
        counting.Changes.Add(Card(read, below, RuleChangeKind.Expired));
        return false;
    }

    private void Refuse(MappingEntry entry, Documents.Diagnostic fault)
    {
        diagnostics.Add(fault);
        NotLoaded(entry, [fault]);
    }

    private RuleChange Card(OverlayEntry read, CountingEntry entry, RuleChangeKind kind) => new(read.Id, entry.Title, kind, Layer, read.Entry.Key.Span.ToString())
    {
        Because = read.Reasons?.Because,
        By = read.Reasons?.By,
        Until = read.Reasons?.Until,
    };

    private static string Difference(MappingEntry field, MappingNode below) =>
        $"{field.Key.Text}: {LayeredRules.Typed(field.Value)} instead of {(below.Find(field.Key.Text) is { } old ? LayeredRules.Typed(old.Value) : "nothing")}";
}
