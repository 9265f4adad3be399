using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A short piece of half a leaf spring as a rigid body that stands where the middle of its stretch of the bent leaf does.</summary>
/// <remarks>
/// The leaf is the arc of <see cref="LeafShape"/>. Sideways it is straight, and it twists evenly from the clamp, where it stands as the axle does,
/// to the eye, whose bolt keeps its direction in what carries it: the tangent of its roll grows in proportion to the length. How far the bent
/// and twisted leaf lies beside its rigid pieces at most says <see cref="LeafPieceBox"/>; that holds as long as leaf and twist stay within
/// <see cref="LeafShape"/>'s limit, <see cref="MostSlope"/> and <see cref="MostTwist"/>: beyond these a pose has no answer.
/// </remarks>
/// <param name="Name">What it is called.</param>
/// <param name="Leaf">The half of the spring.</param>
/// <param name="Index">Which of its <see cref="Count"/> pieces of equal length, counted from the clamp.</param>
public sealed record LeafPiece(string Name, Joint.Leaf Leaf, int Index) : Follower(Name)
{
    /// <summary>How many pieces half a spring has.</summary>
    public const int Count = 6;

    /// <summary>The eye may be beside the clamp by this share of the leaf's length.</summary>
    public const double MostSlope = 0.15;

    /// <summary>The tangent of the largest angle by which a leaf is twisted up to its eye: 19 degrees.</summary>
    public const double MostTwist = 0.35;

    private double Share => (Index + 0.5) / Count;

    /// <summary>The piece's section in the measured state, mm.</summary>
    public (Vector3d Middle, Vector3d Along, Vector3d Across, Vector3d Up) Measured
    {
        get
        {
            LeafFrame<Real> frame = MeasuredFrame();
            return (Plain(frame.Middle), Plain(frame.Along), Plain(frame.Across), Plain(frame.Up));
        }
    }

    /// <summary>The box around the piece's stretch of a leaf of some width and thickness, in every pose.</summary>
    /// <param name="widthMm">Width of the leaf.</param>
    /// <param name="belowMm">How far what is swept reaches below the leaf's middle line.</param>
    /// <param name="aboveMm">And above it.</param>
    public LeafPieceBox Box(double widthMm, double belowMm, double aboveMm) =>
        LeafPieceBox.Of(LeafShape.MeasuredLengthMm(Leaf), widthMm, belowMm, aboveMm);

    internal override ImmutableArray<int> Carriers => [Leaf.SeatBody, Leaf.EyeBody];

    internal override Follower Renumbered(Func<int, int> body) => this with { Leaf = Leaf with { SeatBody = body(Leaf.SeatBody), EyeBody = body(Leaf.EyeBody) } };

    internal override string? Fault(int bodies)
    {
        if (Leaf.SeatBody < 0 || Leaf.SeatBody >= bodies || Leaf.EyeBody < 0 || Leaf.EyeBody >= bodies) return $"{Name} rides on a body that the linkage does not have.";
        if (Index is < 0 or >= Count) return $"A leaf has no piece {Index}.";
        return Plain(MeasuredFrame().Middle).IsFinite ? null : $"The leaf of {Name} is bent too far as it was measured.";
    }

    internal override RigidMotion? Pose(ReadOnlySpan<RigidMotion> bodies)
    {
        RigidMotion seat = bodies[Leaf.SeatBody], eye = seat.Inverse * bodies[Leaf.EyeBody];
        (_, Vector3d y, _) = LeafShape.Axes(Leaf);
        LeafFrame<Real> now = Frame(Vector3<Real>.From(eye.Apply(Leaf.Eye)), Vector3<Real>.From(eye.Rotation.Apply(y)));
        (Vector3d middle, Vector3d along, Vector3d across, Vector3d up) = Measured;
        if (!Plain(now.Middle).IsFinite) return null;
        Rotation turn = Rotation.FromAxes(Plain(now.Along), Plain(now.Across), Plain(now.Up)) * Rotation.FromAxes(along, across, up).Inverse;
        return seat * new RigidMotion(turn, Plain(now.Middle) - turn.Apply(middle));
    }

    internal override MotionJet<T> Jet<T>(ReadOnlySpan<MotionJet<T>> bodies)
    {
        MotionJet<T> seat = bodies[Leaf.SeatBody], own = InSeat(bodies);
        return new MotionJet<T>(own.Centre, seat.Apply(own.Place), seat.Direction(own.ColumnX), seat.Direction(own.ColumnY), seat.Direction(own.ColumnZ));
    }

    /// <summary>Its place as the axle sees it: how that itself moves is never computed.</summary>
    internal MotionJet<T> InSeat<T>(ReadOnlySpan<MotionJet<T>> bodies)
        where T : unmanaged, IReal<T>
    {
        MotionJet<T> seat = bodies[Leaf.SeatBody], eye = bodies[Leaf.EyeBody];
        (_, Vector3d y, _) = LeafShape.Axes(Leaf);
        LeafFrame<Taylor2<T>> now = Frame(eye.ApplyInFrame(seat, Leaf.Eye), eye.DirectionInFrame(seat, y));
        (Vector3d middle, Vector3d along, Vector3d across, Vector3d up) = Measured;
        return new MotionJet<T>(middle, now.Middle, Column(along.X, across.X, up.X), Column(along.Y, across.Y, up.Y), Column(along.Z, across.Z, up.Z));

        // Where a unit vector goes whose parts along the measured section's axes are known.
        Vector3<Taylor2<T>> Column(double a, double b, double c) =>
            (now.Along * Taylor2<T>.From(a)) + (now.Across * Taylor2<T>.From(b)) + (now.Up * Taylor2<T>.From(c));
    }

    private static Vector3d Plain(Vector3<Real> v) => new(v.X.Value, v.Y.Value, v.Z.Value);

    private LeafFrame<Real> MeasuredFrame() => Frame(Vector3<Real>.From(Leaf.Eye), Vector3<Real>.From(LeafShape.Axes(Leaf).Y));

    /// <summary>The section at the piece's middle as the axle sees it, its own points as measured.</summary>
    /// <param name="eye">The eye's middle, axle frame, mm.</param>
    /// <param name="bolt">The direction of the eye's bolt, axle frame.</param>
    private LeafFrame<T> Frame<T>(Vector3<T> eye, Vector3<T> bolt)
        where T : unmanaged, IReal<T>
    {
        (Vector3d ax, Vector3d ay, Vector3d az) = LeafShape.Axes(Leaf);
        (Vector3<T> x, Vector3<T> y, Vector3<T> z) = (Vector3<T>.From(ax), Vector3<T>.From(ay), Vector3<T>.From(az));
        var clamp = Vector3<T>.From(Leaf.Clamp);
        Vector3<T> tip = eye - clamp;
        double length = LeafShape.MeasuredLengthMm(Leaf), reach = length * Share;
        T turn = LeafShape.Turn(Vector3<T>.Dot(tip, z), length) * T.From(2 / length), sideways = Vector3<T>.Dot(tip, y), slope = sideways * T.From(1 / length);
        T twist = Vector3<T>.Dot(bolt, Turned(x, z, turn).Up) / Vector3<T>.Dot(bolt, y);
        T bent = turn * T.From(Share), square = T.Square(bent);
        (Vector3<T> tangent, Vector3<T> normal) = Turned(x, z, bent);
        // Half of what the arc rises above its tangent at the ends of the piece: then it lies on both sides of the piece alike.
        T middle = turn * T.From(length / (16 * Count * Count));
        // Known within its limits only; plain numbers beyond are not numbers, intervals are unbounded.
        T known = T.Rest(T.Square(twist), MostTwist * MostTwist, 0) + T.Rest(T.Square(slope), MostSlope * MostSlope, 0);
        Vector3<T> at = clamp + (x * (TurnSeries.Sine(square) * T.From(reach))) + (y * (sideways * T.From(Share)))
            + (z * (TurnSeries.Rise(square) * bent * T.From(reach))) + (normal * middle) + new Vector3<T>(known, known, known);
        T yaw = T.From(1) / T.Sqrt(T.From(1) + T.Square(slope)), roll = twist * T.From(Share), level = T.From(1) / T.Sqrt(T.From(1) + T.Square(roll));
        Vector3<T> along = (tangent + (y * slope)) * yaw, across = (y - (tangent * slope)) * yaw;
        return new LeafFrame<T>(at, along, (across + (normal * roll)) * level, (normal - (across * roll)) * level);
    }

    // The axes of a section whose leaf has turned by an angle from the clamp.
    private static (Vector3<T> Along, Vector3<T> Up) Turned<T>(Vector3<T> x, Vector3<T> z, T angle)
        where T : unmanaged, IReal<T>
    {
        T square = T.Square(angle), sine = TurnSeries.Sine(square) * angle, cosine = T.From(1) - (TurnSeries.Rise(square) * square);
        return ((x * cosine) + (z * sine), (z * cosine) - (x * sine));
    }
}
