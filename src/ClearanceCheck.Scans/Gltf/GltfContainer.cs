using System.Buffers.Binary;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>The two chunks of a glTF file: its JSON head, and the binary one of a .glb.</summary>
internal sealed record GltfContainer(ReadOnlyMemory<byte> Json, ReadOnlyMemory<byte>? Binary)
{
    private const int HeadLength = 12;
    private const int ChunkHeadLength = 8;
    private const uint JsonChunk = 0x4E4F534A;
    private const uint BinaryChunk = 0x004E4942;

    /// <summary>Takes the file apart; null, and said, where it can't be.</summary>
    public static GltfContainer? Open(ScanFile file)
    {
        if (file.Bytes.StartsWith("glTF"u8)) return OpenBinary(file);
        ReadOnlyMemory<byte> text = file.Bytes.StartsWith("\uFEFF"u8) ? file.Content[3..] : file.Content;
        if (text.Span.TrimStart(" \t\r\n"u8).StartsWith("{"u8)) return new GltfContainer(text, null);
        ScanMessages.GltfStart(file);
        return null;
    }

    private static GltfContainer? OpenBinary(ScanFile file)
    {
        if (file.Length < HeadLength + ChunkHeadLength || Number(file, 8) != file.Length)
        {
            ScanMessages.GltfLength(file, file.Length < HeadLength ? null : Number(file, 8));
            return null;
        }

        if (Number(file, 4) != 2)
        {
            ScanMessages.GltfVersion(file, ScanMessages.Whole(Number(file, 4)));
            return null;
        }

        ReadOnlyMemory<byte>? json = Chunk(file, HeadLength, JsonChunk, out int next);
        if (json is null) return null;
        if (next == file.Length) return new GltfContainer(json.Value, null);
        ReadOnlyMemory<byte>? binary = Chunk(file, next, BinaryChunk, out _);
        return binary is null ? null : new GltfContainer(json.Value, binary);
    }

    private static ReadOnlyMemory<byte>? Chunk(ScanFile file, int at, uint kind, out int next)
    {
        next = 0;
        if (file.Length - at >= ChunkHeadLength && Number(file, at + 4) == kind && Number(file, at) <= file.Length - at - ChunkHeadLength)
        {
            int length = (int)Number(file, at);
            next = at + ChunkHeadLength + length;
            return file.Content.Slice(at + ChunkHeadLength, length);
        }

        ScanMessages.GltfChunk(file, at);
        return null;
    }

    private static uint Number(ScanFile file, int at) => BinaryPrimitives.ReadUInt32LittleEndian(file.Bytes[at..]);
}
