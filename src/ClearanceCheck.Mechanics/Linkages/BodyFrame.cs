using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A body's place in any kind of number: that of its centre (mm) and the three columns of its rotation.</summary>
/// <param name="Centre">The point whose place is told, body coordinates.</param>
internal readonly record struct BodyFrame<T>(Vector3d Centre, Vector3<T> Place, Vector3<T> ColumnX, Vector3<T> ColumnY, Vector3<T> ColumnZ)
    where T : unmanaged, IReal<T>
{
    public Vector3<T> Point(Vector3d point) => Point(Vector3<T>.From(point));

    public Vector3<T> Point(Vector3<T> point) => Place + Direction(point - Vector3<T>.From(Centre));

    public Vector3<T> Direction(Vector3<T> direction) => (ColumnX * direction.X) + (ColumnY * direction.Y) + (ColumnZ * direction.Z);

    /// <summary>A quaternion of the rotation, of any length: four times its scalar part times itself.</summary>
    /// <remarks>Textbook, from memory; near a half turn it comes to nothing, which a suspension does not reach.</remarks>
    public (T W, Vector3<T> V) Quaternion => (
        T.From(1) + ColumnX.X + ColumnY.Y + ColumnZ.Z,
        new Vector3<T>(ColumnY.Z - ColumnZ.Y, ColumnZ.X - ColumnX.Z, ColumnX.Y - ColumnY.X));

    /// <summary>The same with every number made another kind.</summary>
    public BodyFrame<TOther> As<TOther>(Func<T, TOther> convert)
        where TOther : unmanaged, IReal<TOther>
    {
        return new(Centre, Each(Place), Each(ColumnX), Each(ColumnY), Each(ColumnZ));

        Vector3<TOther> Each(Vector3<T> v) => new(convert(v.X), convert(v.Y), convert(v.Z));
    }
}
