namespace ClearanceCheck.Scans.Ply;

/// <summary>How a PLY number is stored.</summary>
internal enum PlyType
{
    Int8,
    UInt8,
    Int16,
    UInt16,
    Int32,
    UInt32,
    Float32,
    Float64,
}
