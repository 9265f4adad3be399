using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Half of a leaf spring as an arc of one curvature and fixed length: where its tip can be, and how it is bent there.</summary>
/// <remarks>
/// A spring of uniform strength, thick where it is clamped and thin at the eye, takes the same curvature all along (common practice: leaves are
/// graded so). An arc of length a that turns by p ends at x = a sin(p) / p along its clamp and z = a (1 - cos(p)) / p square to it. With
/// s = (z / a)^2 both are power series in s: x = a G(s), and p = 2 (z / a) H(s). Their coefficients come from reverting s(p^2) in exact fractions
/// (Lagrange's formula; derived, tested against the closed form and against an integration of the beam). Told by z alone, an interval of
/// places does not count z twice; what the series leave out is below 1e-13 up to <see cref="Steepest"/>.
/// </remarks>
public static class LeafShape
{
    /// <summary>The largest s: a tip that has risen by two fifths of the leaf's length; real ones stay far below.</summary>
    private const double Steepest = 0.17;

    private static readonly ImmutableArray<double> AlongTerms =
    [
        1.0, -0.6666666666666666, -0.3111111111111111, -0.29417989417989415, -0.3489241622574956,
        -0.46417615306504195, -0.6620765008066596, -0.9897260380223343, -1.530354757762746, -2.42738759168601,
        -3.927701876317604, -6.457849155623146, -10.758281973859935, -18.120339352538025, -30.80594003105966,
        -52.79307231253778, -91.10372457523181, -158.17553886070522, -276.1079259634114, -484.28154252263494,
        -853.0603509919433, -1508.4812123809213, -2676.8251145431364, -4765.221397236886, -8507.656089203509,
        -15229.865859601374, -27330.622955681712, -49157.38956134917, -88601.57428703278, -160008.34695287945,
    ];

    private static readonly ImmutableArray<double> TurnTerms =
    [
        1.0, 0.3333333333333333, 0.28888888888888886, 0.3291005291005291, 0.42772486772486773,
        0.6008978675645342, 0.8887378676585026, 1.3633713154700808, 2.1493674861089187, 3.461016012303278,
        5.668114642769219, 9.411767935638515, 15.808671370039278, 26.81258883678821, 45.855922879450574,
        78.99168052422947, 136.93157667089523, 238.6926026110079, 418.13667193862386, 735.7241569641811,
        1299.68121195256, 2304.193346611242, 4098.443762574452, 7311.6159516928265, 13079.584224400463,
        23456.625911905703, 42164.21769581671, 75954.70692278152, 137097.88186718302, 247920.47292380565,
    ];

    // Derivatives: d(G)/ds, and d(z H)/dz = H + 2 s dH/ds.
    private static readonly ImmutableArray<double> AlongSlopeTerms = [.. AlongTerms.Skip(1).Select((g, i) => (i + 1) * g)];
    private static readonly ImmutableArray<double> TurnSlopeTerms = [.. TurnTerms.Select((h, i) => ((2 * i) + 1) * h)];

    /// <summary>Length of the arc to a tip, mm.</summary>
    /// <remarks>The chord turns by half of what the arc does: length = chord (p / 2) / sin(p / 2), tan(p / 2) = z / x.</remarks>
    /// <param name="along">The tip along the clamp's direction, mm; above zero.</param>
    /// <param name="up">The tip square to it, mm.</param>
    public static double LengthMm(double along, double up)
    {
        double half = Trigonometry.Atan2(Math.Abs(up), along), chord = Math.Sqrt((along * along) + (up * up));
        return half < 1e-9 ? chord : chord * half / Trigonometry.SinCos(half).Sin;
    }

    /// <summary>Curvature of a leaf whose tip has risen, 1/mm, positive when it bends up.</summary>
    /// <param name="up">The tip square to the clamp's direction, mm.</param>
    /// <param name="lengthMm">The leaf's length.</param>
    public static double Curvature(double up, double lengthMm) => 2 * Turn(new Real(up), lengthMm).Value / (lengthMm * lengthMm);

    /// <summary>The largest curvature that a leaf may have, 1/mm: beyond it nothing is known of it.</summary>
    internal static double MostCurvature(double lengthMm) => Curvature(Math.Sqrt(Steepest) * lengthMm * (1 - 1e-12), lengthMm) * (1 + 1e-9);

    /// <summary>A point of a leaf in a pose, chassis frame, mm.</summary>
    /// <param name="leaf">The leaf.</param>
    /// <param name="bodies">Places of the linkage's bodies.</param>
    /// <param name="share">Its share of the leaf's length, from 0 at the clamp to 1 at the eye.</param>
    public static Vector3d At(Joint.Leaf leaf, ReadOnlySpan<RigidMotion> bodies, double share)
    {
        (Vector3d x, Vector3d y, Vector3d z) = Axes(leaf);
        RigidMotion seat = bodies[leaf.SeatBody];
        Vector3d tip = seat.Rotation.ApplyInverse(bodies[leaf.EyeBody].Apply(leaf.Eye) - seat.Apply(leaf.Clamp));
        double length = MeasuredLengthMm(leaf), turn = 2 * Turn(new Real(Vector3d.Dot(tip, z)), length).Value / length * share, reach = length * share;
        // The chord to the share, at half of its turn; sideways the leaf is taken as straight.
        double half = turn / 2, chord = Math.Abs(half) < 1e-9 ? reach : reach * Trigonometry.SinCos(half).Sin / half;
        (double sin, double cos) = Trigonometry.SinCos(half);
        return seat.Apply(leaf.Clamp) + seat.ApplyToDirection((x * (chord * cos)) + (z * (chord * sin)) + (y * (Vector3d.Dot(tip, y) * share)));
    }

    /// <summary>How far along the clamp's direction the tip of a leaf is that has risen by z, mm.</summary>
    internal static T Along<T>(T up, double length)
        where T : unmanaged, IReal<T> => Series(AlongTerms, Square(up, length)) * T.From(length);

    /// <summary>Its derivative by z.</summary>
    internal static T AlongSlope<T>(T up, double length)
        where T : unmanaged, IReal<T> => Series(AlongSlopeTerms, Square(up, length)) * up * T.From(2 / length);

    /// <summary>Half its length times the angle by which it turns, mm: its rise, were it bent little.</summary>
    internal static T Turn<T>(T up, double length)
        where T : unmanaged, IReal<T> => Series(TurnTerms, Square(up, length)) * up;

    /// <summary>Its derivative by z.</summary>
    internal static T TurnSlope<T>(T up, double length)
        where T : unmanaged, IReal<T> => Series(TurnSlopeTerms, Square(up, length));

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

    private static T Square<T>(T up, double length)
        where T : unmanaged, IReal<T> => T.Square(up * T.From(1 / length));

    private static T Series<T>(ImmutableArray<double> terms, T square)
        where T : unmanaged, IReal<T>
    {
        // Beyond the limit nothing is known; below it the polynomial is the model.
        T sum = T.Rest(square, Steepest, 0);
        for (int i = terms.Length - 1; i >= 0; i--) sum = T.From(terms[i]) + (square * sum);
        return sum;
    }

    /// <summary>The clamp's axes as measured: along the leaf, across it and up.</summary>
    internal static (Vector3d X, Vector3d Y, Vector3d Z) Axes(Joint.Leaf leaf)
    {
        Vector3d x = leaf.Along.NormalizedOr(Vector3d.UnitX), y = Vector3d.Cross(leaf.Up, x).NormalizedOr(Vector3d.UnitY);
        return (x, y, Vector3d.Cross(x, y));
    }
}
