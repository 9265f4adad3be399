using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>What stands above the changes of one overlay, and the changes before they are read.</summary>
/// <param name="On">The layer that it stands on.</param>
/// <param name="From">The first version of that layer that it fits.</param>
/// <param name="Before">The first version that it no longer fits.</param>
internal sealed record OverlayHeader(
    Placed<string> Name, Placed<string> Version, Placed<string> On, VersionNumber From, VersionNumber Before, ImmutableArray<OverlayFile> Files, LayerFiles Layer)
{
    public RuleLayer Card => new(Name.Value, Version.Value, true, Layer.Hash);
}

/// <summary>The sections of one file of an overlay; each is null where the file has none.</summary>
internal sealed record OverlayFile(
    LayerFile File, Placed<string> Name, Placed<string> Version, OverlayBase On, MappingNode? Change, MappingNode? SwitchOff, MappingNode? Rules, MappingNode? Items, MappingNode? Coverage)
{
    public IEnumerable<MappingNode> Sections => new[] { Change, SwitchOff, Rules, Items, Coverage }.OfType<MappingNode>();

    public static OverlayFile? Read(LayerFile file) => file.Root is null ? null : MappingReader.ReadFile(file.Root, file.Faults, reader => Read(reader, file));

    private static OverlayFile? Read(MappingReader reader, LayerFile file)
    {
        Field format = reader.Required("format", "the number of this file's format: 1");
        Placed<int>? number = format.PositiveInteger();
        if (number is { Value: not 1 }) RuleMessages.OtherFormat(format);
        Placed<string>? name = reader.Required("overlay", "the name of the shop's rules").Id();
        Placed<string>? version = VersionNumber.Read(reader.Required("version", "the overlay's version, three numbers"))?.Text;
        OverlayBase? on = reader.Required("on", "what the overlay stands on").Mapping(OverlayBase.Read);
        Field change = reader.Optional("change"), off = reader.Optional("switch-off"), rules = reader.Optional("rules");
        Field items = reader.Optional(ChecklistFile.ItemsKey), coverage = reader.Optional(ChecklistFile.CoverageKey);
        Field[] sections = [change, off, rules, items, coverage];
        if (!sections.Any(f => f.IsPresent)) OverlayMessages.ChangesNothing(reader);
        // Ids are asked for here, so that a faulty one is told once.
        bool isSound = sections.All(f => !f.IsPresent || f.Entries() is not null);
        if (number is not { Value: 1 } || name is null || version is null || on is null || !isSound) return null;
        return new OverlayFile(file, name, version, on, change.Node as MappingNode, off.Node as MappingNode, rules.Node as MappingNode, items.Node as MappingNode, coverage.Node as MappingNode);
    }
}

/// <summary>What an overlay stands on.</summary>
internal sealed record OverlayBase(Placed<string> Library, VersionNumber From, VersionNumber Before)
{
    public static OverlayBase? Read(MappingReader reader)
    {
        Placed<string>? library = reader.Required("library", "the name of the library or overlay below").Id();
        Field beforeField = reader.Required("before", "the first version that it no longer fits");
        (Placed<string> Text, VersionNumber Number)? from = VersionNumber.Read(reader.Required("from", "the first version that it fits")), before = VersionNumber.Read(beforeField);
        if (library is null || from is null || before is null) return null;
        if (from.Value.Number.CompareTo(before.Value.Number) < 0) return new OverlayBase(library, from.Value.Number, before.Value.Number);
        OverlayMessages.NoVersionBetween(beforeField, from.Value.Number, before.Value.Number);
        return null;
    }
}
