using System.Buffers.Binary;

namespace ClearanceCheck.Scans.Ply;

/// <summary>The numbers of a PLY body that is binary.</summary>
internal sealed class PlyBinaryValues(ScanFile file, PlyHeader header) : PlyValues
{
    private readonly bool bigEndian = header.Format == PlyFormat.BigEndian;
    private int at = header.BodyAt;

    public override long Left => file.Length - at;

    public override bool TryNext(PlyType type, out double value)
    {
        value = 0;
        int start = at;
        if (!TrySkip(type)) return false;
        ReadOnlySpan<byte> bytes = file.Bytes[start..at];
        value = bigEndian ? Big(bytes, type) : Little(bytes, type);
        return true;
    }

    public override bool TrySkip(PlyType type)
    {
        if (type.Size() > Left)
        {
            ScanMessages.PlyEnds(file);
            return false;
        }

        at += type.Size();
        return true;
    }

    public override long LeastSize(PlyElement element) => element.Properties.Sum(p => (long)p.LeastSize);

    public override bool IsAtEnd() => Left == 0;

    private static double Little(ReadOnlySpan<byte> bytes, PlyType type) => type switch
    {
        PlyType.Int8 => (sbyte)bytes[0],
        PlyType.UInt8 => bytes[0],
        PlyType.Int16 => BinaryPrimitives.ReadInt16LittleEndian(bytes),
        PlyType.UInt16 => BinaryPrimitives.ReadUInt16LittleEndian(bytes),
        PlyType.Int32 => BinaryPrimitives.ReadInt32LittleEndian(bytes),
        PlyType.UInt32 => BinaryPrimitives.ReadUInt32LittleEndian(bytes),
        PlyType.Float32 => BinaryPrimitives.ReadSingleLittleEndian(bytes),
        _ => BinaryPrimitives.ReadDoubleLittleEndian(bytes),
    };

    private static double Big(ReadOnlySpan<byte> bytes, PlyType type) => type switch
    {
        PlyType.Int8 => (sbyte)bytes[0],
        PlyType.UInt8 => bytes[0],
        PlyType.Int16 => BinaryPrimitives.ReadInt16BigEndian(bytes),
        PlyType.UInt16 => BinaryPrimitives.ReadUInt16BigEndian(bytes),
        PlyType.Int32 => BinaryPrimitives.ReadInt32BigEndian(bytes),
        PlyType.UInt32 => BinaryPrimitives.ReadUInt32BigEndian(bytes),
        PlyType.Float32 => BinaryPrimitives.ReadSingleBigEndian(bytes),
        _ => BinaryPrimitives.ReadDoubleBigEndian(bytes),
    };
}
