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

    /// <summary>True for a part that is where the factory put it: the lift did not touch it.</summary>
    public bool IsOriginal { get; init; }

    /// <summary>Words that rules can ask for, such as <c>shielded</c>; none is read from a file yet.</summary>
    public ImmutableArray<string> Facts { get; init; } = [];

    /// <summary>What the file says of it beside its shape, by the word of <see cref="PartProperties"/>, in the property's unit.</summary>
    public ImmutableSortedDictionary<string, double> Properties { get; init; } = ImmutableSortedDictionary<string, double>.Empty;
}
