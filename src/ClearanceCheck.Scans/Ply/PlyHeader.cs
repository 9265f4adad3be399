namespace ClearanceCheck.Scans.Ply;

/// <summary>What a PLY file says about its body.</summary>
/// <param name="Format">How the body is stored.</param>
/// <param name="Elements">Its tables, in the order of the body.</param>
/// <param name="BodyAt">Where the body starts, in bytes.</param>
/// <param name="BodyLine">The body's first line, from 1.</param>
internal sealed record PlyHeader(PlyFormat Format, IReadOnlyList<PlyElement> Elements, int BodyAt, int BodyLine)
{
    public PlyElement? Element(string name) => Elements.FirstOrDefault(e => e.Name == name);
}
