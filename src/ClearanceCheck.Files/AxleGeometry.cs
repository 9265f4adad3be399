using System.Collections.Immutable;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>The measured geometry of an axle, whichever layout it has.</summary>
internal sealed record AxleGeometry
{
    public ImmutableSortedDictionary<string, MeasuredPoint> Points { get; init; } = ImmutableSortedDictionary<string, MeasuredPoint>.Empty;

    /// <summary>The state in which all of it was measured.</summary>
    public required string MeasuredIn { get; init; }

    /// <summary>Points that were measured once more in a second state.</summary>
    public ImmutableArray<ComparedPoint> ComparedPoints { get; init; } = [];

    public ImmutableArray<string> FreeBodies { get; init; } = [];

    public ImmutableArray<FreeJoint> FreeJoints { get; init; } = [];

    /// <summary>Bodies that the wheels' travels are read on, with the axle's name; empty where those are what the wheels are bolted to.</summary>
    public ImmutableArray<string> FreeTravelBodies { get; init; } = [];

    /// <summary>True when one body reaches from wheel to wheel: the two hubs then give the direction of the wheels' axes.</summary>
    public required bool IsSolid { get; init; }

    /// <summary>Body (with the axle's name) and hub of the left wheel.</summary>
    public required (string Body, MeasuredPoint Hub) Left { get; init; }

    public required (string Body, MeasuredPoint Hub) Right { get; init; }
}
