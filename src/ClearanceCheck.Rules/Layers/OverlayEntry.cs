using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>One entry of an overlay as read: a change, a switch-off, or something of its own. What is null could not be read, and that has been said.</summary>
/// <param name="Section">The key it stands below.</param>
/// <param name="Fields">Of a change what it puts in the place of the rule's own.</param>
/// <param name="Own">A rule, an item or an expectation of the overlay's own.</param>
internal sealed record OverlayEntry(string Section, MappingEntry Entry, ChangeReasons? Reasons, ImmutableArray<MappingEntry> Fields, CountingEntry? Own)
{
    public const string Change = "change", SwitchOff = "switch-off", Added = "rules";

    public string Id => Entry.Key.Text;

    /// <summary>Reads all entries of a file.</summary>
    /// <param name="counting">What stands below: its kind says which keys a change may name.</param>
    public static IEnumerable<OverlayEntry> ReadAll(OverlayFile file, LayeredRules counting, RuleReader reader)
    {
        var context = new ReadingContext(file.File.Faults);
        foreach (MappingEntry entry in Sound(file.Change))
            if (new Field(entry.Value, context).Mapping(r => ReadChange(entry, counting.Find(entry.Key.Text), r)) is { } change) yield return change;
        foreach (MappingEntry entry in Sound(file.SwitchOff))
            if (new Field(entry.Value, context).Mapping(ChangeReasons.Read) is { } reasons) yield return new OverlayEntry(SwitchOff, entry, reasons, [], null);
        foreach (OverlayEntry own in ReadOwn(Added, file.Rules, context, (key, value) => ReadRule(reader, key, value))) yield return own;
        foreach (OverlayEntry own in ReadOwn(ChecklistFile.ItemsKey, file.Items, context, ChecklistFile.ReadItem)) yield return own;
        foreach (OverlayEntry own in ReadOwn(ChecklistFile.CoverageKey, file.Coverage, context, ChecklistFile.ReadRow)) yield return own;
    }

    private static CountingRule? ReadRule(RuleReader reader, ScalarNode key, Field value) =>
        reader.Read(key.Text, value) is { } rule ? new CountingRule(rule, key, (MappingNode)value.Node!) : null;

    private static IEnumerable<OverlayEntry> ReadOwn(string name, MappingNode? section, ReadingContext context, Func<ScalarNode, Field, CountingEntry?> read)
    {
        foreach (MappingEntry entry in Sound(section))
            if (read(entry.Key, new Field(entry.Value, context)) is { } own) yield return new OverlayEntry(name, entry, null, [], own);
    }

    private static IEnumerable<MappingEntry> Sound(MappingNode? section) => section is null ? [] : section.Entries.Where(e => IdText.IsId(e.Key.Text));

    private static OverlayEntry ReadChange(MappingEntry entry, CountingEntry? below, MappingReader reader)
    {
        // What nothing stands below of is told as such, whatever is to be changed of it.
        if (below is null) reader.Allow([.. RuleReader.Keys, .. ItemReader.Keys, .. CoverageReader.Keys]);
        else reader.Allow(below.Keys.AsSpan());
        if (below is not (CountingItem or CountingRow) && reader.Has("quantity")) OverlayMessages.OtherQuantity(reader.Optional("quantity"), entry.Key.Text);
        ImmutableArray<MappingEntry> fields = [.. ChangeReasons.FieldsOf(reader.Node)];
        if (fields.IsEmpty) OverlayMessages.EmptyChange(reader, entry.Key.Text);
        return new OverlayEntry(Change, entry, ChangeReasons.Read(reader), fields, null);
    }
}
