namespace ClearanceCheck.Scans.Ply;

/// <summary>The words and sizes of PLY's numbers.</summary>
internal static class PlyTypes
{
    public static PlyType? FromWord(string word) => word switch
    {
        "char" or "int8" => PlyType.Int8,
        "uchar" or "uint8" => PlyType.UInt8,
        "short" or "int16" => PlyType.Int16,
        "ushort" or "uint16" => PlyType.UInt16,
        "int" or "int32" => PlyType.Int32,
        "uint" or "uint32" => PlyType.UInt32,
        "float" or "float32" => PlyType.Float32,
        "double" or "float64" => PlyType.Float64,
        _ => null,
    };

    /// <summary>Bytes of one number.</summary>
    public static int Size(this PlyType type) => type switch
    {
        PlyType.Int8 or PlyType.UInt8 => 1,
        PlyType.Int16 or PlyType.UInt16 => 2,
        PlyType.Int32 or PlyType.UInt32 or PlyType.Float32 => 4,
        _ => 8,
    };

    public static bool IsWhole(this PlyType type) => type is not (PlyType.Float32 or PlyType.Float64);
}
