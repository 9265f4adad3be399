using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Which of two pieces is measured first: any rule will do that does not depend on which one was named first.</summary>
internal static class PieceOrder
{
    /// <returns>Negative when the first comes first, zero for pieces that are the same.</returns>
    public static int Compare(in Piece first, in Piece second)
    {
        int order = second.Corners.Length - first.Corners.Length;
        if (order == 0) order = first.Kind - second.Kind;
        for (int i = 0; order == 0 && i < first.Corners.Length; i++) order = Compare(first.Corners[i], second.Corners[i]);
        return order != 0 ? order : first.Radius.CompareTo(second.Radius);
    }

    private static int Compare(Vector3d a, Vector3d b)
    {
        int order = a.X.CompareTo(b.X);
        if (order == 0) order = a.Y.CompareTo(b.Y);
        return order != 0 ? order : a.Z.CompareTo(b.Z);
    }
}
