using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Writes a glTF document of the planned meshes' triangles alone, after their accessors were checked.</summary>
internal sealed class GltfReducer
{
    // The modes of a primitive: points, lines, loops and strips of lines, then triangles, strips and fans.
    private const long Triangles = 4;
    private const long MostMode = 6;

    private readonly ScanFile file;
    private readonly GltfRoot root;
    private readonly GltfPlan plan;
    private readonly GltfBuffers buffers;
    private readonly GltfAccessors accessors;
    private readonly Dictionary<int, int> places = [];
    private readonly List<List<GltfPrimitive>> meshes = [];

    private GltfReducer(ScanFile file, GltfRoot root, GltfPlan plan, GltfBuffers buffers)
    {
        (this.file, this.root, this.plan, this.buffers) = (file, root, plan, buffers);
        accessors = new GltfAccessors(file, root, buffers);
    }

    /// <summary>The reduced document; null, and said, where something in it can't be used.</summary>
    public static GltfReduced? Reduce(ScanFile file, GltfRoot root, GltfPlan plan, GltfBuffers buffers) => new GltfReducer(file, root, plan, buffers).Reduce();

    private GltfReduced? Reduce()
    {
        long triangles = 0;
        var counts = new Dictionary<int, long>();
        foreach (int mesh in plan.Instances.Select(i => i.Mesh))
        {
            if (!counts.TryGetValue(mesh, out long count))
            {
                if (Check(mesh) is not { } found) return null;
                counts[mesh] = count = found;
            }

            triangles += count;
            if (triangles <= ScanLimits.MostTriangles) continue;
            ScanMessages.TooManyTriangles(file, triangles);
            return null;
        }

        return new GltfReduced(Write(), buffers.Opened, places, (int)triangles);
    }

    // How many triangles a mesh has.
    private long? Check(int index)
    {
        if (root.Entry("meshes", index, "mesh") is not { } mesh || mesh.List("primitives") is not { } listed) return null;
        long triangles = 0;
        var primitives = new List<GltfPrimitive>();
        for (int i = 0; i < listed.Length; i++)
        {
            var primitive = new GltfValue(file, listed[i], $"primitive {i} of mesh {index}");
            if (primitive.Whole("mode", 0, MostMode, Triangles) is not { } mode) return null;
            if (mode < Triangles)
            {
                plan.OtherPrimitives++;
                continue;
            }

            if (Check(primitive, mode) is not { } found) return null;
            primitives.Add(found);
            triangles += found.Mode == Triangles ? found.Corners / 3 : Math.Max(0, found.Corners - 2);
        }

        if (primitives.Count == 0) return 0;
        places[index] = meshes.Count;
        meshes.Add(primitives);
        return triangles;
    }

    private GltfPrimitive? Check(GltfValue primitive, long mode)
    {
        if (primitive.Has("targets"))
        {
            ScanMessages.GltfMoved(file, "morph targets");
            return null;
        }

        primitive.TryGet("attributes", out JsonElement json);
        if (new GltfValue(file, json, primitive.Place).Index("POSITION") is not { } points) return null;
        if (accessors.Points(points) is not { } pointCount) return null;
        if (!primitive.Has("indices")) return Sound(primitive, new GltfPrimitive(mode, points, null, pointCount));
        if (primitive.Index("indices") is not { } indices || accessors.Indices(indices) is not { } cornerCount) return null;
        return Sound(primitive, new GltfPrimitive(mode, points, indices, cornerCount));
    }

    private GltfPrimitive? Sound(GltfValue place, GltfPrimitive primitive)
    {
        if (primitive.Mode != Triangles || primitive.Corners % 3 == 0) return primitive;
        ScanMessages.GltfCorners(file, place.Place, primitive.Corners);
        return null;
    }

    private byte[] Write()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteStartObject("asset");
            json.WriteString("version", "2.0");
            json.WriteEndObject();
            accessors.Write(json);
            json.WriteStartArray("meshes");
            foreach (List<GltfPrimitive> primitives in meshes) WriteMesh(json, primitives);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private void WriteMesh(Utf8JsonWriter json, List<GltfPrimitive> primitives)
    {
        json.WriteStartObject();
        json.WriteStartArray("primitives");
        foreach (GltfPrimitive primitive in primitives)
        {
            json.WriteStartObject();
            json.WriteNumber("mode", primitive.Mode);
            json.WriteStartObject("attributes");
            json.WriteNumber("POSITION", accessors.PlaceOf(primitive.Points));
            json.WriteEndObject();
            if (primitive.Indices is { } indices) json.WriteNumber("indices", accessors.PlaceOf(indices));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
