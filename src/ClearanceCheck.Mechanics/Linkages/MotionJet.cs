using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A body's place with its derivatives along one coordinate: that of its centre (mm) and the three columns of its rotation.</summary>
internal readonly record struct MotionJet<T>(
    Vector3d Centre, Vector3<Taylor2<T>> Place, Vector3<Taylor2<T>> ColumnX, Vector3<Taylor2<T>> ColumnY, Vector3<Taylor2<T>> ColumnZ)
    where T : unmanaged, IReal<T>
{
    public static MotionJet<T> Still => new(
        default, default, Column(Vector3d.UnitX), Column(Vector3d.UnitY), Column(Vector3d.UnitZ));

    /// <summary>The jet of a body from the placement whose unknowns carry the derivatives.</summary>
    public static MotionJet<T> Of(Linkage linkage, in Placement<Taylor2<T>> at, int body) => new(
        linkage.Centres[body], at.Centre(body), at.Direction(body, Vector3d.UnitX), at.Direction(body, Vector3d.UnitY), at.Direction(body, Vector3d.UnitZ));

    /// <summary>Its place as a frame.</summary>
    public BodyFrame<Taylor2<T>> Frame => new(Centre, Place, ColumnX, ColumnY, ColumnZ);

    /// <summary>The same place without derivatives.</summary>
    public MotionJet<T> Held
    {
        get
        {
            BodyFrame<Taylor2<T>> held = Frame.As(t => new Taylor2<T>(t.Value, default, default));
            return new(Centre, held.Place, held.ColumnX, held.ColumnY, held.ColumnZ);
        }
    }

    /// <summary>The path of a body's point.</summary>
    public Vector3<Taylor2<T>> Apply(Vector3d point)
    {
        Vector3d arm = point - Centre;
        return Place + (ColumnX * Taylor2<T>.From(arm.X)) + (ColumnY * Taylor2<T>.From(arm.Y)) + (ColumnZ * Taylor2<T>.From(arm.Z));
    }

    /// <summary>The path of a point that itself moves in the body.</summary>
    public Vector3<Taylor2<T>> Apply(Vector3<Taylor2<T>> point) => Place + Direction(point - Column(Centre));

    /// <summary>A direction that itself turns in the body.</summary>
    public Vector3<Taylor2<T>> Direction(Vector3<Taylor2<T>> v) => (ColumnX * v.X) + (ColumnY * v.Y) + (ColumnZ * v.Z);

    /// <summary>A direction of the body as seen from another moving body.</summary>
    public Vector3<Taylor2<T>> DirectionInFrame(in MotionJet<T> frame, Vector3d direction)
    {
        Vector3<Taylor2<T>> now = Direction(Column(direction));
        return new Vector3<Taylor2<T>>(
            Vector3<Taylor2<T>>.Dot(frame.ColumnX, now), Vector3<Taylor2<T>>.Dot(frame.ColumnY, now), Vector3<Taylor2<T>>.Dot(frame.ColumnZ, now));
    }

    /// <summary>The same point's path as seen from another moving body.</summary>
    public Vector3<Taylor2<T>> ApplyInFrame(in MotionJet<T> frame, Vector3d point)
    {
        Vector3<Taylor2<T>> apart = Apply(point) - frame.Place;
        return Column(frame.Centre) + new Vector3<Taylor2<T>>(
            Vector3<Taylor2<T>>.Dot(frame.ColumnX, apart),
            Vector3<Taylor2<T>>.Dot(frame.ColumnY, apart),
            Vector3<Taylor2<T>>.Dot(frame.ColumnZ, apart));
    }

    /// <summary>The same for two bodies that share a point: only their turning counts.</summary>
    /// <param name="frame">The body that looks.</param>
    /// <param name="joint">The point they share, measured state.</param>
    /// <param name="point">The point looked at.</param>
    public Vector3<Taylor2<T>> ApplyInFrameAbout(in MotionJet<T> frame, Vector3d joint, Vector3d point)
    {
        Vector3d arm = point - joint;
        Vector3<Taylor2<T>> turned = (ColumnX * Taylor2<T>.From(arm.X)) + (ColumnY * Taylor2<T>.From(arm.Y)) + (ColumnZ * Taylor2<T>.From(arm.Z));
        return Column(joint) + new Vector3<Taylor2<T>>(
            Vector3<Taylor2<T>>.Dot(frame.ColumnX, turned),
            Vector3<Taylor2<T>>.Dot(frame.ColumnY, turned),
            Vector3<Taylor2<T>>.Dot(frame.ColumnZ, turned));
    }

    private static Vector3<Taylor2<T>> Column(Vector3d v) => Vector3<Taylor2<T>>.From(v);
}
