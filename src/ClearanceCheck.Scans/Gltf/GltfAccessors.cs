using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Checks accessors against the buffers they read, and writes those that passed.</summary>
internal sealed class GltfAccessors(ScanFile file, GltfRoot root, GltfBuffers buffers)
{
    private const int Byte = 5120;
    private const int UnsignedByte = 5121;
    private const int Short = 5122;
    private const int UnsignedShort = 5123;
    private const int UnsignedInt = 5125;
    private const int Float = 5126;
    private const long MostStride = 252;

    private const int PointNumbers = 3;

    // Three corners for each triangle that is read at most.
    private const long MostIndices = 3L * ScanLimits.MostTriangles;

    // Numbers in the file, in the order in which they are written.
    private readonly OrderedDictionary<long, long> counts = [];
    private readonly OrderedDictionary<long, long> viewLengths = [];

    /// <summary>How many points an accessor has; null, and said, where it can't be used as points.</summary>
    public long? Points(long index) => Checked(index, ScanLimits.MostPoints, "VEC3", [Float, Byte, UnsignedByte, Short, UnsignedShort], PointNumbers);

    /// <summary>How many corners an accessor has; null, and said, where it can't be used as corners.</summary>
    public long? Indices(long index) => Checked(index, MostIndices, "SCALAR", [UnsignedByte, UnsignedShort, UnsignedInt], 1);

    /// <summary>The number of a checked accessor in the document that is written.</summary>
    public int PlaceOf(long index) => counts.IndexOf(index);

    /// <summary>Writes the checked accessors with their views and buffers.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("buffers");
        foreach ((int index, ReadOnlyMemory<byte> content) in buffers.Opened)
        {
            json.WriteStartObject();
            json.WriteString("uri", GltfTriangles.BufferName(index));
            json.WriteNumber("byteLength", content.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("bufferViews");
        Dictionary<int, int> places = buffers.Opened.Keys.Index().ToDictionary(b => b.Item, b => b.Index);
        foreach (long view in viewLengths.Keys) WriteView(json, places, root.Known("bufferViews", view));
        json.WriteEndArray();
        json.WriteStartArray("accessors");
        foreach (long index in counts.Keys) WriteAccessor(json, root.Known("accessors", index));
        json.WriteEndArray();
    }

    private static int Size(long component) => component switch
    {
        Byte or UnsignedByte => 1,
        Short or UnsignedShort => 2,
        _ => 4,
    };

    private static void Copy(Utf8JsonWriter json, JsonElement from, params ReadOnlySpan<string> keys)
    {
        foreach (string key in keys)
        {
            if (!from.TryGetProperty(key, out JsonElement value)) continue;
            json.WritePropertyName(key);
            if (value.ValueKind == JsonValueKind.Number) json.WriteNumberValue((long)value.GetDouble());
            else value.WriteTo(json);
        }
    }

    private long? Checked(long index, long most, string type, int[] components, int numbers)
    {
        if (counts.TryGetValue(index, out long known)) return known;
        if (root.Entry("accessors", index, "accessor") is not { } accessor) return null;
        if (accessor.Text("type") != type) return accessor.Wrong("type", $"`{type}`");
        if (accessor.Whole("componentType", Byte, Float) is not { } component) return null;
        if (!components.Contains((int)component)) return accessor.Wrong("componentType", "one of " + string.Join(", ", components));
        if (Count(accessor, most) is not { } count || !IsFlag(accessor, "normalized")) return null;
        int size = Size(component) * numbers;
        bool packed = type == "SCALAR";
        if (accessor.Has("bufferView") ? !Fits(accessor, count, size, packed) : !accessor.Has("sparse")) return accessor.Has("bufferView") ? null : accessor.Wrong("bufferView", "the number of the view that holds the points");
        if (accessor.Has("sparse") && !SparseFits(accessor, count, size)) return null;
        counts[index] = count;
        return count;
    }

    private long? Count(GltfValue accessor, long most)
    {
        if (accessor.Whole("count", 1, GltfValue.MostWhole) is not { } count) return null;
        if (count <= most) return count;
        ScanMessages.GltfCount(file, accessor.Place, count, most);
        return null;
    }

    private static bool IsFlag(GltfValue accessor, string key)
    {
        if (!accessor.TryGet(key, out JsonElement value) || value.ValueKind is JsonValueKind.True or JsonValueKind.False) return true;
        accessor.Wrong(key, "true or false");
        return false;
    }

    // Whether so many entries lie inside the view that an accessor, or a part of a sparse one, names.
    private bool Fits(GltfValue accessor, long count, int size, bool packed)
    {
        if (accessor.Index("bufferView") is not { } index || View(index) is not { } length) return false;
        if (accessor.Whole("byteOffset", 0, ScanLimits.MostBytes, 0) is not { } offset) return false;
        var view = new GltfValue(file, root.Known("bufferViews", index), $"bufferView {index}");
        if (view.Whole("byteStride", 1, MostStride, size) is not { } stride) return false;
        if (stride < size || (packed && stride != size))
        {
            view.Wrong("byteStride", packed ? $"{size}" : $"{size} or more");
            return false;
        }

        long needed = offset + ((count - 1) * stride) + size;
        if (needed <= length) return true;
        ScanMessages.GltfRange(file, accessor.Place, count, needed, $"bufferView {index}", length);
        return false;
    }

    private bool SparseFits(GltfValue accessor, long count, int size)
    {
        accessor.TryGet("sparse", out JsonElement json);
        var sparse = new GltfValue(file, json, $"the sparse part of {accessor.Place}");
        if (sparse.Whole("count", 1, count) is not { } changed) return false;
        sparse.TryGet("indices", out JsonElement indices);
        sparse.TryGet("values", out JsonElement values);
        var where = new GltfValue(file, indices, sparse.Place);
        if (where.Whole("componentType", Byte, Float) is not { } component) return false;
        if (component is UnsignedByte or UnsignedShort or UnsignedInt) return Fits(where, changed, Size(component), true) && Fits(new GltfValue(file, values, sparse.Place), changed, size, true);
        where.Wrong("componentType", $"one of {UnsignedByte}, {UnsignedShort}, {UnsignedInt}");
        return false;
    }

    // How long a view is, after it was found to lie inside its buffer.
    private long? View(long index)
    {
        if (viewLengths.TryGetValue(index, out long known)) return known;
        if (root.Entry("bufferViews", index, "bufferView") is not { } view) return null;
        if (view.Index("buffer") is not { } buffer || buffers.Open(buffer) is not { } content) return null;
        if (view.Whole("byteOffset", 0, ScanLimits.MostBytes, 0) is not { } offset || view.Whole("byteLength", 1, ScanLimits.MostBytes) is not { } length) return null;
        if (offset + length > content.Length)
        {
            ScanMessages.GltfRange(file, view.Place, 1, offset + length, $"buffer {buffer}", content.Length);
            return null;
        }

        viewLengths[index] = length;
        return length;
    }

    private static void WriteView(Utf8JsonWriter json, Dictionary<int, int> places, JsonElement view)
    {
        json.WriteStartObject();
        json.WriteNumber("buffer", places[(int)view.GetProperty("buffer").GetDouble()]);
        Copy(json, view, "byteOffset", "byteLength", "byteStride");
        json.WriteEndObject();
    }

    private void WriteAccessor(Utf8JsonWriter json, JsonElement accessor)
    {
        json.WriteStartObject();
        WriteViewNumber(json, accessor);
        Copy(json, accessor, "byteOffset", "componentType", "normalized", "count", "type");
        if (accessor.TryGetProperty("sparse", out JsonElement sparse))
        {
            json.WriteStartObject("sparse");
            Copy(json, sparse, "count");
            foreach (string part in new[] { "indices", "values" })
            {
                json.WriteStartObject(part);
                WriteViewNumber(json, sparse.GetProperty(part));
                Copy(json, sparse.GetProperty(part), "byteOffset", "componentType");
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void WriteViewNumber(Utf8JsonWriter json, JsonElement from)
    {
        if (from.TryGetProperty("bufferView", out JsonElement view)) json.WriteNumber("bufferView", viewLengths.IndexOf((long)view.GetDouble()));
    }
}
