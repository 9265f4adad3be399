using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>The whole JSON head: its lists, each taken apart once, because looking an entry up walks through all before it.</summary>
internal sealed class GltfRoot(ScanFile file, JsonElement json)
{
    private readonly Dictionary<string, JsonElement[]> lists = [];

    /// <summary>The head as an object.</summary>
    public GltfValue Value { get; } = new(file, json, "the file");

    /// <summary>The entries of a list, none where there is no such list; null, and said, where it is no list.</summary>
    public JsonElement[]? List(string name)
    {
        if (lists.TryGetValue(name, out JsonElement[]? known)) return known;
        return Value.List(name) is { } entries ? lists[name] = entries : null;
    }

    /// <summary>An entry of a list; null, and said, where there is none.</summary>
    public GltfValue? Entry(string list, long index, string noun)
    {
        if (List(list) is not { } entries) return null;
        if (index < entries.Length) return new GltfValue(file, entries[index], $"{noun} {index}");
        ScanMessages.GltfNoEntry(file, noun, index, entries.Length);
        return null;
    }

    /// <summary>An entry that was found before.</summary>
    public JsonElement Known(string list, long index) => lists[list][index];
}
