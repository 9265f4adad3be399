namespace ClearanceCheck.Scans.Ply;

/// <summary>The numbers of a PLY body, one after the other.</summary>
internal abstract class PlyValues
{
    private protected PlyValues()
    {
    }

    /// <summary>Bytes that are left.</summary>
    public abstract long Left { get; }

    /// <summary>The next number; false, and said, where there is none.</summary>
    public abstract bool TryNext(PlyType type, out double value);

    /// <summary>Leaves out a number; false, and said, where there is none.</summary>
    public abstract bool TrySkip(PlyType type);

    /// <summary>Bytes that a row takes at least.</summary>
    public abstract long LeastSize(PlyElement element);

    /// <summary>Whether nothing but blanks is left.</summary>
    public abstract bool IsAtEnd();
}
