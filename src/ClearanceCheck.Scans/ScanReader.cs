using ClearanceCheck.Documents;
using ClearanceCheck.Scans.Gltf;
using ClearanceCheck.Scans.Ply;
using ClearanceCheck.Scans.Stl;

namespace ClearanceCheck.Scans;

/// <summary>Reads scans: STL (binary, text), PLY (text, binary), glTF (.glb, .gltf).</summary>
public static class ScanReader
{
    /// <summary>The scan, or null and at least one fault.</summary>
    /// <param name="name">The file's name; its ending says the format.</param>
    /// <param name="content">The file.</param>
    /// <param name="claims">What the file does not say.</param>
    /// <param name="beside">The content of a file in the same folder by its bare name, or null; asked for the buffers of glTF only.</param>
    /// <param name="at">Where the scan is named: every message stands there.</param>
    /// <param name="diagnostics">Takes faults and notes.</param>
    public static Scan? Read(
        string name, ReadOnlyMemory<byte> content, ScanClaims claims, Func<string, ReadOnlyMemory<byte>?> beside, SourceSpan at, DiagnosticBag diagnostics)
    {
        var file = new ScanFile(name, content, claims, beside, at, diagnostics);
        if (!ClaimChecks.AreSound(file)) return null;
        if (!HasSize(file)) return null;
        MeshBuilder? mesh = Mesh(file);
        if (mesh is null) return null;
        if (mesh.TriangleCount == 0)
        {
            ScanMessages.NoTriangles(file);
            return null;
        }

        Scan? scan = ScanPlacement.Place(file, mesh);
        if (scan is null || !ClaimChecks.SizesFit(file, scan)) return null;
        int flat = FlatTriangles.Count(scan);
        if (flat > 0) ScanMessages.FlatTriangles(file, flat, scan.TriangleCount);
        return scan;
    }

    private static bool HasSize(ScanFile file)
    {
        if (file.Length == 0) ScanMessages.EmptyFile(file);
        else if (file.Length > ScanLimits.MostBytes) ScanMessages.TooLarge(file, file.Length);
        else return true;
        return false;
    }

    private static MeshBuilder? Mesh(ScanFile file)
    {
        if (Ends(file.Name, ".stl")) return StlReader.Read(file);
        if (Ends(file.Name, ".ply")) return PlyReader.Read(file);
        if (Ends(file.Name, ".glb") || Ends(file.Name, ".gltf")) return GltfReader.Read(file);
        ScanMessages.OtherFormat(file);
        return null;
    }

    private static bool Ends(string name, string ending) => name.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
