namespace ClearanceCheck.Scans.Stl;

/// <summary>Reads STL of both kinds.</summary>
internal static class StlReader
{
    // As far as a writer's blanks before the first word are followed.
    private const int MostLead = 64;

    /// <summary>The triangles; null, and said, where the file can't be used.</summary>
    public static MeshBuilder? Read(ScanFile file)
    {
        // Binary files may start with `solid` too: the length decides. No text that is short enough to be read passes this check,
        // because four letters as a count claim more than 512 MB.
        if (BinaryStl.HasItsLength(file.Bytes)) return BinaryStl.Read(file);
        return LooksLikeText(file.Bytes) ? AsciiStl.Read(file) : BinaryStl.Refuse(file);
    }

    private static bool LooksLikeText(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> start = bytes[..Math.Min(bytes.Length, MostLead)].TrimStart(" \t\r\n"u8);
        if (!AsciiStl.IsWord(start[..Math.Min(start.Length, 5)], "solid"u8)) return false;
        return !bytes[..Math.Min(bytes.Length, BinaryStl.HeadLength)].Contains((byte)0);
    }
}
