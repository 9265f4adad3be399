namespace ClearanceCheck.Scans.Ply;

/// <summary>One column of a PLY element.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Type">How its number, or each number of its list, is stored.</param>
/// <param name="CountType">How the length of its list is stored; null for a single number.</param>
internal sealed record PlyProperty(string Name, PlyType Type, PlyType? CountType)
{
    public bool IsList => CountType is not null;

    /// <summary>Bytes in a row at least, when stored in binary.</summary>
    public int LeastSize => (CountType ?? Type).Size();
}
