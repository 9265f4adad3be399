using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Vehicles;

/// <summary>A scanned surface: its triangles in a tree, vehicle frame in the measured state, mm.</summary>
/// <param name="File">The file's name as typed.</param>
/// <param name="Solid">The triangles, each without thickness.</param>
public sealed record Scan(string File, Solid Solid);
