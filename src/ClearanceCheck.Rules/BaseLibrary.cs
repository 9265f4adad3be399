using System.Collections.Immutable;
using System.Reflection;

namespace ClearanceCheck.Rules;

/// <summary>The base rule library that the program carries.</summary>
public static class BaseLibrary
{
    /// <summary>The name of the library.</summary>
    public const string Name = "base";

    private const string Folder = "rules/";

    /// <summary>The files of the library in ordinal order of their names.</summary>
    public static ImmutableArray<RuleFile> Files { get; } = ReadAll(typeof(BaseLibrary).Assembly);

    private static ImmutableArray<RuleFile> ReadAll(Assembly assembly) =>
    [
        .. assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => new RuleFile(name[Folder.Length..], Bytes(assembly, name))),
    ];

    private static byte[] Bytes(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
