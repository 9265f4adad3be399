namespace ClearanceCheck.Scans;

/// <summary>How much of a scan is read at most.</summary>
public static class ScanLimits
{
    /// <summary>Bytes of a file, and of all buffers beside it together.</summary>
    public const long MostBytes = 512L * 1024 * 1024;

    /// <summary>Triangles of a scan.</summary>
    public const int MostTriangles = 4_000_000;

    /// <summary>Points of a scan, after equal corners became one.</summary>
    public const int MostPoints = 4_000_000;

    /// <summary>How far a point may lie from the vehicle's zero and from the file's, mm: a kilometre.</summary>
    public const double FarthestMm = 1e6;

    /// <summary>How much of a claimed length its tolerance may be: a check that passes what is a tenth too long is none.</summary>
    public const double MostWithin = 0.1;

    /// <summary>Bytes of a PLY header.</summary>
    internal const int MostHeader = 64 * 1024;

    /// <summary>Levels of nodes in glTF.</summary>
    internal const int MostLevels = 64;

    /// <summary>Nodes, meshes, primitives, accessors, buffers of a glTF file, each.</summary>
    internal const int MostEntries = 100_000;
}
