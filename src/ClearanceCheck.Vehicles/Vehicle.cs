using System.Collections.Immutable;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Vehicles;

/// <summary>The vehicle under inspection as a model without doubt: every reference is resolved, every number is finite.</summary>
public sealed record Vehicle
{
    /// <summary>The body that does not move.</summary>
    public const string Chassis = "chassis";

    public required VehicleDescription Description { get; init; }

    /// <summary>Names of the axles inspected.</summary>
    public required ImmutableArray<string> Scope { get; init; }

    /// <summary>True when the whole vehicle is in scope: then what it is expected to have counts, and <see cref="Scope"/> names all axles.</summary>
    public bool IsWhole { get; init; }

    /// <summary>What the inspector answers for.</summary>
    public InspectorsRecord Record { get; init; } = InspectorsRecord.Empty;

    public required ParameterVector Parameters { get; init; }

    public required ImmutableArray<Axle> Axles { get; init; }

    public required ImmutableArray<Part> Parts { get; init; }

    /// <summary>Names of bodies that are carried by the chassis and taken as fixed to it.</summary>
    public required ImmutableArray<string> FixedBodies { get; init; }

    /// <summary>The states in which it was measured, by name.</summary>
    public ImmutableArray<MeasuringState> States { get; init; } = [];

    /// <summary>Points of parts on moving bodies that were measured in another state than their axle's layout; what moves them places them.</summary>
    public ImmutableArray<StatedPoint> StatedPoints { get; init; } = [];

    /// <summary>How far the rails leaned while it was measured; null when not typed.</summary>
    public RailPitch? RailPitch { get; init; }

    /// <summary>Hub to fender at ride height before the lift by corner: <c>rear-left</c>; empty when nobody read it.</summary>
    public ImmutableSortedDictionary<string, MeasuredLength> BeforeLift { get; init; } = ImmutableSortedDictionary<string, MeasuredLength>.Empty;

    /// <summary>Hub to fender before the lift at the ends of the travel, by corner; a corner without any is left out.</summary>
    public ImmutableSortedDictionary<string, OriginalTravel> OriginalTravels { get; init; } = ImmutableSortedDictionary<string, OriginalTravel>.Empty;

    /// <summary>How far tires roll now and before the lift, by axle; empty where nobody typed the tire before.</summary>
    public ImmutableSortedDictionary<string, RollingChange> RollingChanges { get; init; } = ImmutableSortedDictionary<string, RollingChange>.Empty;

    /// <summary>Gaps that were read directly.</summary>
    public ImmutableArray<DirectGap> DirectGaps { get; init; } = [];

    /// <summary>What was found by hand where a report asked for it.</summary>
    public ImmutableArray<HandCheck> HandChecks { get; init; } = [];

    /// <summary>Findings that somebody takes the word for.</summary>
    public ImmutableArray<AcceptedFinding> Accepted { get; init; } = [];

    /// <summary>What was taken for granted while reading.</summary>
    public required ImmutableArray<ModelAssumption> Assumptions { get; init; }

    /// <summary>Every reading as typed, for the report.</summary>
    public required ImmutableArray<TypedReading> Readings { get; init; }
}

/// <summary>What the inspector wrote about the vehicle; texts as typed.</summary>
public sealed record VehicleDescription
{
    public required string Name { get; init; }
    public string? Job { get; init; }
    public string? Lift { get; init; }
    public string? Date { get; init; }
    public string? Inspector { get; init; }
    public string? Odometer { get; init; }
    public string? Drive { get; init; }
    public string? Load { get; init; }
    public string? Fuel { get; init; }
    public string? Datum { get; init; }
}

/// <summary>Something nobody typed that the model rests on.</summary>
public sealed record ModelAssumption(string Path, string Text);

/// <summary>A reading as typed.</summary>
/// <param name="Parameter">Index of its (first) parameter.</param>
/// <param name="IsPoint">True for three parameters in a row, false for one.</param>
public sealed record TypedReading(string Path, string Typed, int Parameter, bool IsPoint);
