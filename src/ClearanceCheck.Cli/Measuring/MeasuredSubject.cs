using System.Collections.Immutable;
using ClearanceCheck.Cli.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>What was measured on which parts: the worst over all reachable poses, or the value in one pose.</summary>
internal sealed record MeasuredSubject
{
    public required Part First { get; init; }

    public required Part? Second { get; init; }

    /// <summary><c>solved</c> or <c>not-evaluated</c> over all poses; for one pose what can be said of it.</summary>
    public required string Answer { get; init; }

    /// <summary>In the quantity's unit; null when it is not known.</summary>
    public double? Value { get; init; }

    /// <summary>Over all poses: value, bound and uncertainty.</summary>
    public Measurement? Worst { get; init; }

    /// <summary>The pose by coordinate; empty when nothing moves.</summary>
    public ImmutableArray<ShownCoordinate> Pose { get; init; } = [];

    /// <summary>What ends the travel at, or before, this pose.</summary>
    public ImmutableArray<string> Stops { get; init; } = [];

    /// <summary>Why there is no value.</summary>
    public string? NotEvaluated { get; init; }

    public ImmutableArray<string> PartIds => Second is null ? [First.Id] : [First.Id, Second.Id];
}
