using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Subspaces;

namespace ClearanceCheck.Quantities.Sets;

/// <summary>A face of an axle's pose space: what is held in it. Nothing held is the whole space.</summary>
public sealed record PoseSubset
{
    /// <summary>A pose this near to a stop, mm, counts as on it: more than the search's own give and less than anybody measures. What holds within it holds on the stop.</summary>
    public const double OnStopMm = 0.5;

    public static PoseSubset Whole { get; } = new();

    /// <summary>Coordinates that are kept.</summary>
    public ImmutableArray<HeldCoordinate> Held { get; init; } = [];

    /// <summary>Numbers of the stops that the poses lean on.</summary>
    public ImmutableArray<int> OnStops { get; init; } = [];

    /// <summary>Numbers of the stops that are taken away.</summary>
    public ImmutableArray<int> WithoutStops { get; init; } = [];

    /// <summary>Further limits of the poses, made for each set of parameter values anew.</summary>
    public Func<AxleModule, ReadOnlyMemory<double>, IEnumerable<Stop>>? Also { get; init; }

    /// <summary>True when the wheels are held at a typed end of the travel because no stop is known there.</summary>
    public bool EndsAtNoStop { get; init; }

    public bool IsWhole => Held.IsEmpty && OnStops.IsEmpty && WithoutStops.IsEmpty && Also is null;

    /// <summary>What is held in both; null when they hold a coordinate at two places.</summary>
    public PoseSubset? And(PoseSubset other)
    {
        if (Held.Any(h => other.Held.Any(o => o.Coordinate == h.Coordinate && o.Value != h.Value))) return null;
        return new PoseSubset
        {
            Held = [.. Held.Union(other.Held)],
            OnStops = [.. OnStops.Union(other.OnStops).Order()],
            WithoutStops = [.. WithoutStops.Union(other.WithoutStops).Order()],
            Also = Also ?? other.Also,
            EndsAtNoStop = EndsAtNoStop || other.EndsAtNoStop,
        };
    }

    /// <summary>The stops that cut it, in an axle with given parameter values.</summary>
    public IEnumerable<Stop> Stops(AxleModule module, ReadOnlyMemory<double> parameters)
    {
        ImmutableArray<Stop> stops = module.Motion.Stops;
        for (int j = 0; j < stops.Length; j++)
            if (!WithoutStops.Contains(j)) yield return stops[j];
        foreach (int j in OnStops) yield return HeldStop.Of(stops[j], OnStopMm);
        if (Also is null) yield break;
        foreach (Stop stop in Also(module, parameters)) yield return stop;
    }

    /// <summary>The axle's motion in it.</summary>
    public PoseSubspace Space(AxleModule module, ReadOnlyMemory<double> parameters) => new(module.Motion, Held, [.. Stops(module, parameters)]);
}
