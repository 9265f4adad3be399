using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Extensions of glTF that change where triangles are: all but one are refused by name.</summary>
internal static class GltfExtensions
{
    private const string Quantized = "KHR_mesh_quantization";

    // These hide, pack or repeat triangles, also in files that say one can do without them.
    private static readonly IReadOnlyList<string> Refused =
        ["KHR_draco_mesh_compression", "EXT_meshopt_compression", "KHR_meshopt_compression", "MPEG_buffer_circular", "EXT_mesh_gpu_instancing"];

    private static readonly IReadOnlyList<string> ForLooks = ["KHR_materials_", "KHR_texture_", "EXT_texture_", "KHR_lights_", "KHR_xmp"];

    /// <summary>Whether the triangles can be read without an extension that is not known here; says the first that is not.</summary>
    public static bool AreKnown(ScanFile file, GltfValue root)
    {
        string? unknown = root.Texts("extensionsRequired").FirstOrDefault(name => name != Quantized && !ForLooks.Any(start => name.StartsWith(start, StringComparison.Ordinal)))
            ?? root.Texts("extensionsUsed").FirstOrDefault(Refused.Contains)
            ?? Within(root, "nodes") ?? Within(root, "bufferViews") ?? Within(root, "meshes");
        if (unknown is null) return true;
        ScanMessages.GltfExtension(file, unknown);
        return false;
    }

    // A file may use an extension without listing it.
    private static string? Within(GltfValue root, string list) =>
        root.TryGet(list, out JsonElement entries) && entries.ValueKind == JsonValueKind.Array ? entries.EnumerateArray().Select(Within).FirstOrDefault(name => name is not null) : null;

    private static string? Within(JsonElement entry)
    {
        if (entry.ValueKind != JsonValueKind.Object) return null;
        if (entry.TryGetProperty("extensions", out JsonElement used) && used.ValueKind == JsonValueKind.Object)
            foreach (string name in Refused)
                if (used.TryGetProperty(name, out _)) return name;
        return entry.TryGetProperty("primitives", out JsonElement primitives) && primitives.ValueKind == JsonValueKind.Array
            ? primitives.EnumerateArray().Select(Within).FirstOrDefault(name => name is not null)
            : null;
    }
}
