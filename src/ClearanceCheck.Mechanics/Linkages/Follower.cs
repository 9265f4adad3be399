using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A rigid body that no joint holds: the places of the linkage's bodies say where it is. A closed family.</summary>
/// <param name="Name">What it is called.</param>
public abstract record Follower(string Name)
{
    /// <summary>Points nearer to each other than this give no direction, mm.</summary>
    public const double ShortestMm = 1e-6;

    /// <summary>The bodies that its place depends on; the chassis may be among them.</summary>
    internal abstract ImmutableArray<int> Carriers { get; }

    /// <summary>The same in a linkage that numbers its bodies otherwise.</summary>
    internal abstract Follower Renumbered(Func<int, int> body);

    /// <summary>Why a linkage of so many bodies can't carry it; null when it can.</summary>
    internal abstract string? Fault(int bodies);

    /// <summary>Where it is; the identity in the measured state. Null where it has no certain place.</summary>
    internal abstract RigidMotion? Pose(ReadOnlySpan<RigidMotion> bodies);

    /// <summary>Its place with derivatives, from those of the linkage's bodies; parts without bounds where it may have no place.</summary>
    internal abstract MotionJet<T> Jet<T>(ReadOnlySpan<MotionJet<T>> bodies)
        where T : unmanaged, IReal<T>;
}
