using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Half of a leaf spring as an arc of one curvature: what its tip says of its curvature and length.</summary>
/// <remarks>
/// A spring of uniform strength, thick where it is clamped and thin at the eye, takes the same curvature all along (common practice: leaves are
/// graded so). An arc that leaves its clamp along x and ends at (x, z) turns by twice the angle t of its chord, tan t = z / x, so with q = (z / x)^2
///     length = x (1 + q) atan(z / x) / (z / x),   curvature = 2 z / (x^2 + z^2).
/// Geometry of the tangent and the chord of a circle, derived; tested against an integration of the beam.
/// </remarks>
public static class LeafShape
{
    /// <summary>Length of the arc to a tip, mm.</summary>
    /// <param name="along">The tip along the clamp's direction, mm; above zero.</param>
    /// <param name="up">The tip square to it, mm.</param>
    public static double LengthMm(double along, double up) => Length(new Real(along), new Real(up)).Value;

    /// <summary>Its curvature, 1/mm, positive when it bends up.</summary>
    public static double Curvature(double along, double up) => Curvature(new Real(along), new Real(up)).Value;

    internal static T Length<T>(T along, T up)
        where T : unmanaged, IReal<T>
    {
        T square = T.Square(up / along);
        return along * (T.From(1) + square) * ArcSeries.Ratio(square);
    }

    internal static T Curvature<T>(T along, T up)
        where T : unmanaged, IReal<T> => (up + up) / (T.Square(along) + T.Square(up));

    /// <summary>The length's derivatives by the tip's two coordinates.</summary>
    internal static (T ByAlong, T ByUp) LengthSlope<T>(T along, T up)
        where T : unmanaged, IReal<T>
    {
        // l = (x^2 + z^2) a / z with a = atan(z / x): dl/dx = 2 x a / z - 1 = 2 ratio - 1;
        // dl/dz = (z^2 - x^2) a / z^2 + x / z = z/x (ratio + bow), bow = (1 - ratio) / q.
        T slope = up / along, square = T.Square(slope), bow = ArcSeries.Bow(square), ratio = T.From(1) - (square * bow);
        return (ratio + ratio - T.From(1), slope * (ratio + bow));
    }

    /// <summary>The curvature's derivatives by the tip's two coordinates.</summary>
    internal static (T ByAlong, T ByUp) CurvatureSlope<T>(T along, T up)
        where T : unmanaged, IReal<T>
    {
        T whole = T.Square(along) + T.Square(up), square = T.Square(whole);
        return (-(T.From(4) * along * up) / square, (T.From(2) * (T.Square(along) - T.Square(up))) / square);
    }

    /// <summary>The tip of a leaf in its seat's axes: along, sideways (left of along seen from up) and up, mm.</summary>
    internal static Vector3<T> Tip<T>(Joint.Leaf leaf, in Placement<T> at, out Vector3<T> along, out Vector3<T> side, out Vector3<T> up)
        where T : unmanaged, IReal<T>
    {
        (Vector3d x, Vector3d y, Vector3d z) = Axes(leaf);
        along = at.Direction(leaf.SeatBody, x);
        side = at.Direction(leaf.SeatBody, y);
        up = at.Direction(leaf.SeatBody, z);
        Vector3<T> tip = at.Point(leaf.EyeBody, leaf.Eye) - at.Point(leaf.SeatBody, leaf.Clamp);
        return new(Vector3<T>.Dot(tip, along), Vector3<T>.Dot(tip, side), Vector3<T>.Dot(tip, up));
    }

    /// <summary>The tip in the measured state, same axes.</summary>
    internal static Vector3d MeasuredTip(Joint.Leaf leaf)
    {
        (Vector3d x, Vector3d y, Vector3d z) = Axes(leaf);
        Vector3d tip = leaf.Eye - leaf.Clamp;
        return new(Vector3d.Dot(tip, x), Vector3d.Dot(tip, y), Vector3d.Dot(tip, z));
    }

    /// <summary>The length of the leaf, mm.</summary>
    internal static double MeasuredLengthMm(Joint.Leaf leaf)
    {
        Vector3d tip = MeasuredTip(leaf);
        return LengthMm(tip.X, tip.Z);
    }

    private static (Vector3d X, Vector3d Y, Vector3d Z) Axes(Joint.Leaf leaf)
    {
        Vector3d x = leaf.Along.NormalizedOr(Vector3d.UnitX), y = Vector3d.Cross(leaf.Up, x).NormalizedOr(Vector3d.UnitY);
        return (x, y, Vector3d.Cross(x, y));
    }
}
