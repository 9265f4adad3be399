using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>One entry of an overlay as read: a change, a switch-off, or a rule of its own. What is null could not be read, and that has been said.</summary>
/// <param name="Section"><c>change</c>, <c>switch-off</c> or <c>rules</c>.</param>
/// <param name="Fields">Of a change what it puts in the place of the rule's own.</param>
/// <param name="Rule">Of a rule of its own.</param>
internal sealed record OverlayEntry(string Section, MappingEntry Entry, ChangeReasons? Reasons, ImmutableArray<MappingEntry> Fields, Rule? Rule)
{
    public const string Change = "change", SwitchOff = "switch-off", Added = "rules";

    public string Id => Entry.Key.Text;

    public static IEnumerable<OverlayEntry> ReadAll(OverlayFile file, RuleReader reader)
    {
        var context = new ReadingContext(file.File.Faults);
        foreach (MappingEntry entry in Sound(file.Change))
            if (new Field(entry.Value, context).Mapping(r => ReadChange(entry, r)) is { } change) yield return change;
        foreach (MappingEntry entry in Sound(file.SwitchOff))
            if (new Field(entry.Value, context).Mapping(ChangeReasons.Read) is { } reasons) yield return new OverlayEntry(SwitchOff, entry, reasons, [], null);
        foreach (MappingEntry entry in Sound(file.Rules))
            if (reader.Read(entry.Key.Text, new Field(entry.Value, context)) is { } rule) yield return new OverlayEntry(Added, entry, null, [], rule);
    }

    private static IEnumerable<MappingEntry> Sound(MappingNode? section) => section is null ? [] : section.Entries.Where(e => IdText.IsId(e.Key.Text));

    private static OverlayEntry ReadChange(MappingEntry entry, MappingReader reader)
    {
        reader.Allow(RuleReader.Keys.AsSpan());
        if (reader.Has("quantity")) OverlayMessages.OtherQuantity(reader.Optional("quantity"), entry.Key.Text);
        ImmutableArray<MappingEntry> fields = [.. ChangeReasons.FieldsOf(reader.Node)];
        if (fields.IsEmpty) OverlayMessages.EmptyChange(reader, entry.Key.Text);
        return new OverlayEntry(Change, entry, ChangeReasons.Read(reader), fields, null);
    }
}
