using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A rigid body whose place two points of other bodies decide: a shock's tube or rod, half of a shaft, a link seen end to end.</summary>
/// <remarks>
/// Its first point stays joined to the first body. Its axis, measured from the first point to the second, turns by the shortest
/// rotation, seen from the chassis, to where the second point is now: it may slide along the axis but does not spin about it.
/// </remarks>
/// <param name="Name">What it is called.</param>
/// <param name="FirstBody">The body that carries the first point: 0 or a moving body of the linkage.</param>
/// <param name="FirstPoint">Where it is joined, measured state, mm.</param>
/// <param name="SecondBody">The body that carries the point it reaches for: 0 or a moving body of the linkage.</param>
/// <param name="SecondPoint">The point it reaches for, measured state, mm.</param>
public sealed record LineFollower(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint) : Follower(Name)
{
    // Of one plus the cosine of the turn: within a tenth of a degree of a half turn no rotation is the shortest with any certainty.
    private const double HalfTurn = 1e-6;

    /// <summary>The measured direction of the axis.</summary>
    internal Vector3d Axis => (SecondPoint - FirstPoint) / (SecondPoint - FirstPoint).Length;

    internal override ImmutableArray<int> Carriers => [FirstBody, SecondBody];

    internal override Follower Renumbered(Func<int, int> body) => this with { FirstBody = body(FirstBody), SecondBody = body(SecondBody) };

    internal override string? Fault(int bodies)
    {
        if (FirstBody < 0 || FirstBody >= bodies || SecondBody < 0 || SecondBody >= bodies) return $"{Name} rides on a body that the linkage does not have.";
        return (SecondPoint - FirstPoint).Length > ShortestMm ? null : $"The two points of {Name} are one.";
    }

    /// <summary>Where it is, or null where its points coincide or its axis points back along the measured one.</summary>
    /// <remarks>Shortest rotation of unit vectors a to b as a quaternion: (1 + a.b, a x b), scaled to length one. Textbook, from memory.</remarks>
    internal override RigidMotion? Pose(ReadOnlySpan<RigidMotion> bodies)
    {
        Vector3d at = bodies[FirstBody].Apply(FirstPoint), reach = bodies[SecondBody].Apply(SecondPoint) - at;
        double length = reach.Length;
        if (!(length > ShortestMm)) return null;
        Vector3d before = Axis, now = reach / length, turn = Vector3d.Cross(before, now);
        double scalar = 1 + Vector3d.Dot(before, now);
        if (!(scalar > HalfTurn)) return null;
        var rotation = Rotation.Normalized(scalar, turn.X, turn.Y, turn.Z);
        return new RigidMotion(rotation, at - rotation.Apply(FirstPoint));
    }

    internal override MotionJet<T> Jet<T>(ReadOnlySpan<MotionJet<T>> bodies) => LineJet.Of(this, bodies);
}
