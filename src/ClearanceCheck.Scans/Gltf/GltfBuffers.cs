using System.Buffers;
using System.Buffers.Text;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>The buffers of a glTF file: in the .glb, in the text as base64, or in files beside it.</summary>
internal sealed class GltfBuffers(ScanFile file, GltfRoot root, ReadOnlyMemory<byte>? binary)
{
    private readonly SortedDictionary<int, ReadOnlyMemory<byte>> opened = [];
    private long bytes = file.Length;

    /// <summary>Buffers that were asked for, by their number.</summary>
    public IReadOnlyDictionary<int, ReadOnlyMemory<byte>> Opened => opened;

    /// <summary>A buffer by its number, cut to its stated length; null, and said, where it can't be had.</summary>
    public ReadOnlyMemory<byte>? Open(long index)
    {
        if (opened.TryGetValue((int)index, out ReadOnlyMemory<byte> known)) return known;
        if (root.Entry("buffers", index, "buffer") is not { } buffer || buffer.Whole("byteLength", 1, ScanLimits.MostBytes) is not { } length) return null;
        if (Content(buffer, index) is not { } content) return null;
        if (content.Length < length)
        {
            ScanMessages.GltfBufferShort(file, index, length, content.Length);
            return null;
        }

        opened[(int)index] = content[..(int)length];
        return content[..(int)length];
    }

    private ReadOnlyMemory<byte>? Content(GltfValue buffer, long index)
    {
        if (!buffer.TryGet("uri", out JsonElement uri))
        {
            if (index == 0 && binary is { } own) return own;
            ScanMessages.GltfNoBuffer(file, index);
            return null;
        }

        if (uri.ValueKind != JsonValueKind.String)
        {
            buffer.Wrong("uri", "the name of a file in quotes");
            return null;
        }

        // Base64 is not made into a string first, except where the JSON has something escaped.
        ReadOnlySpan<byte> raw = JsonMarshal.GetRawUtf8Value(uri)[1..^1];
        if (raw.Contains((byte)'\\')) raw = Encoding.UTF8.GetBytes(buffer.Text("uri")!);
        return raw.StartsWith("data:"u8) ? Embedded(buffer, raw) : BesideFile(buffer.Text("uri")!, index);
    }

    private static ReadOnlyMemory<byte>? Embedded(GltfValue buffer, ReadOnlySpan<byte> uri)
    {
        int comma = uri.IndexOf((byte)',');
        if (comma >= 0 && uri[..comma].EndsWith(";base64"u8))
        {
            ReadOnlySpan<byte> packed = uri[(comma + 1)..];
            byte[] bytes = new byte[Base64.GetMaxDecodedFromUtf8Length(packed.Length)];
            if (Base64.DecodeFromUtf8(packed, bytes, out _, out int written) == OperationStatus.Done) return bytes.AsMemory(0, written);
        }

        ScanMessages.GltfBase64(buffer.File, buffer.Place);
        return null;
    }

    private ReadOnlyMemory<byte>? BesideFile(string uri, long index)
    {
        string name = Uri.UnescapeDataString(uri);
        if (!IsBareName(name))
        {
            ScanMessages.GltfOutside(file, index, name);
            return null;
        }

        if (file.Beside(name) is not { } content)
        {
            ScanMessages.GltfNotBeside(file, index, name);
            return null;
        }

        bytes += content.Length;
        if (bytes <= ScanLimits.MostBytes) return content;
        ScanMessages.TooLarge(file, bytes);
        return null;
    }

    // A stroke leads to another folder, a colon to a drive or an address.
    private static bool IsBareName(string name) =>
        name is not ("" or "." or "..") && name[0] != '~' && !name.Any(c => c is '/' or '\\' or ':' || char.IsControl(c));
}
