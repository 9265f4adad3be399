using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A physical thing on the vehicle.</summary>
public sealed record Part
{
    public required string Id { get; init; }

    /// <summary>As typed; the id where nothing was typed.</summary>
    public required string Name { get; init; }

    public required PartKind Kind { get; init; }

    /// <summary>The body it is fixed to; that of its first end for a part between two bodies.</summary>
    public required string Body { get; init; }

    /// <summary>What it looks like or stops.</summary>
    public required PartForm Form { get; init; }

    /// <summary>Parts it is meant to touch anywhere.</summary>
    public required ImmutableArray<string> Touches { get; init; }

    /// <summary>Words that rules can ask for, such as <c>shielded</c>; none is read from a file yet.</summary>
    public ImmutableArray<string> Facts { get; init; } = [];
}

/// <summary>A place on a body.</summary>
public sealed record Place(string Body, MeasuredPoint At);

/// <summary>What a part is to the engine. A closed family.</summary>
public abstract record PartForm
{
    private protected PartForm()
    {
    }

    /// <summary>A line, pipe or tube: a polyline of its axis and an outside diameter, all on the part's body.</summary>
    /// <param name="JoinedEnds">Numbers of path points (from 0) at which the part is joined to something: contact near them is meant.</param>
    public sealed record Chain(ImmutableArray<MeasuredPoint> Path, MeasuredLength OutsideDiameter, ImmutableArray<int> JoinedEnds) : PartForm;

    /// <summary>A hose between two places where the rubber leaves the ferrules.</summary>
    public sealed record Hose(Place Upper, Place Lower, MeasuredLength FreeLength, MeasuredLength OutsideDiameter) : PartForm;

    /// <summary>A shock between two places: it ends the travel where it is fully open or closed.</summary>
    public sealed record Shock(Place Upper, Place Lower, MeasuredLength Closed, MeasuredLength Open) : PartForm;

    /// <summary>A bump stop on the frame above a pad on the axle; it ends the travel at its crushed height.</summary>
    /// <param name="Crush">What it gives under load, mm.</param>
    public sealed record BumpStop(Place Frame, Place Axle, MeasuredLength Height, MeasuredLength Crush) : PartForm;
}
