using System.Text.Json;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Reads glTF 2.0: the triangles of the default scene's meshes, each moved as its nodes say.</summary>
/// <remarks>
/// Everything that asks for memory or walks is checked here first. The library then gets a document that holds the triangles'
/// accessors alone, and decodes those (sparse and quantized ones too). Nodes move points here in double precision: a scan may
/// stand far from its zero.
/// </remarks>
internal static class GltfReader
{
    // Values, names and brackets of the JSON head; what is read of it takes memory for each.
    private const int MostTokens = 4_000_000;

    /// <summary>The triangles; null, and said, where the file can't be used.</summary>
    public static MeshBuilder? Read(ScanFile file)
    {
        GltfContainer? container = GltfContainer.Open(file);
        if (container is null || !IsJson(file, container.Json)) return null;
        using JsonDocument document = JsonDocument.Parse(container.Json);
        var root = new GltfRoot(file, document.RootElement);
        GltfPlan? plan = GltfPlanner.Plan(file, root);
        if (plan is null) return null;
        GltfReduced? reduced = GltfReducer.Reduce(file, root, plan, new GltfBuffers(file, root, container.Binary));
        MeshBuilder? mesh = reduced is null ? null : GltfTriangles.Read(file, plan, reduced);
        if (mesh is not null) SayWhatIsLeftOut(file, plan);
        return mesh;
    }

    private static void SayWhatIsLeftOut(ScanFile file, GltfPlan plan)
    {
        if (file.Claims.Unit != LengthUnit.Metre) ScanMessages.GltfUnit(file);
        if (plan.OtherPrimitives > 0) ScanMessages.GltfOtherPrimitives(file, plan.OtherPrimitives);
        if (plan.UnusedMeshes > 0) ScanMessages.GltfUnusedMeshes(file, plan.UnusedMeshes);
    }

    private static bool IsJson(ScanFile file, ReadOnlyMemory<byte> json)
    {
        var reader = new Utf8JsonReader(json.Span);
        try
        {
            int tokens = 0;
            while (reader.Read())
            {
                if (++tokens <= MostTokens) continue;
                ScanMessages.GltfTooManyEntries(file);
                return false;
            }

            return true;
        }
        catch (JsonException fault)
        {
            ScanMessages.GltfJson(file, (fault.LineNumber ?? 0) + 1, (fault.BytePositionInLine ?? 0) + 1);
            return false;
        }
    }
}
