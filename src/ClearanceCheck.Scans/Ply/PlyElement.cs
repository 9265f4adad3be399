namespace ClearanceCheck.Scans.Ply;

/// <summary>A table of a PLY file.</summary>
internal sealed record PlyElement(string Name, long Count, IReadOnlyList<PlyProperty> Properties)
{
    public const string Vertices = "vertex";
    public const string Faces = "face";
    public const string Strips = "tristrips";

    /// <summary>The place of a column, or -1.</summary>
    public int Column(params ReadOnlySpan<string> names)
    {
        for (int i = 0; i < Properties.Count; i++)
            if (names.Contains(Properties[i].Name)) return i;
        return -1;
    }
}
