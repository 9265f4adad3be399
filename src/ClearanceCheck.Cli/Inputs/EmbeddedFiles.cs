using System.Collections.Immutable;
using System.Reflection;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>Files that the program carries inside.</summary>
internal static class EmbeddedFiles
{
    private static readonly Assembly Own = typeof(EmbeddedFiles).Assembly;

    /// <summary>Files whose names start with a prefix, without it, with forward strokes, sorted.</summary>
    public static ImmutableArray<StoredFile> Below(string prefix) =>
    [
        .. from resource in Own.GetManifestResourceNames()
           let name = resource.Replace('\\', '/')
           where name.StartsWith(prefix, StringComparison.Ordinal)
           orderby name
           select Read(name[prefix.Length..], resource),
    ];

    private static StoredFile Read(string name, string resource)
    {
        using Stream stream = Own.GetManifestResourceStream(resource)!;
        return StoredFile.Read(name, stream);
    }
}
