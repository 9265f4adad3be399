namespace ClearanceCheck.Scans.Ply;

/// <summary>How the body of a PLY file is stored.</summary>
internal enum PlyFormat
{
    Text,
    LittleEndian,
    BigEndian,
}
