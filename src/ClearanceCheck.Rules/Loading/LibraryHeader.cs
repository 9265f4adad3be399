using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Loading;

/// <summary>What stands above the rules of one file.</summary>
/// <param name="Entries">The rules with an id that is one, before they are read.</param>
internal sealed record LibraryHeader(
    Placed<string> Name, Placed<string> Version, MappingNode Rules, IReadOnlyList<(Placed<string> Key, Field Value)> Entries)
{
    public static LibraryHeader? Read(MappingReader reader) => Read(reader, "rules");

    /// <summary>Reads the header with what stands below one key in place of rules.</summary>
    public static LibraryHeader? Read(MappingReader reader, string list)
    {
        Field format = reader.Required("format", "the number of this file's format: 1");
        Placed<int>? number = format.PositiveInteger();
        if (number is { Value: not 1 }) RuleMessages.OtherFormat(format);
        if (reader.Node.Find("overlay") is not null)
        {
            OverlayMessages.AmongLibraryFiles(reader.Optional("overlay"));
            reader.AllowAll();
            return null;
        }

        Placed<string>? name = reader.Required("library", "the name of the library that the file belongs to").Id();
        Placed<string>? version = VersionNumber.Read(reader.Required("version", "the library's version, three numbers"))?.Text;
        Field rules = reader.Required(list, $"the {list} by their ids");
        IReadOnlyList<(Placed<string>, Field)>? entries = rules.Entries();
        if (number is not { Value: 1 } || name is null || version is null || entries is null) return null;
        return new LibraryHeader(name, version, (MappingNode)rules.Node!, entries);
    }
}
