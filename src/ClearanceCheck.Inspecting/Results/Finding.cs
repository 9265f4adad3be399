using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>A rule's outcome for one subject with its evidence. Lengths in mm, slack in percent.</summary>
public sealed record Finding
{
    /// <summary>Rule and sorted parts, so that links live from run to run: <c>brake-line-near-exhaust--rear-line--tailpipe</c>.</summary>
    public required string Id { get; init; }

    public required string Rule { get; init; }
    public required string Title { get; init; }
    public required Severity Severity { get; init; }
    public required Verdict Verdict { get; init; }
    public string? Consequence { get; init; }
    public string? Advice { get; init; }
    public string? HandCheck { get; init; }

    /// <summary>What hand checks found beside what was expected, one sentence a check; null when nobody typed one.</summary>
    public string? Checked { get; init; }

    /// <summary>Names of quantities to check again after the remedy.</summary>
    public required ImmutableArray<string> Recheck { get; init; }

    /// <summary>One part, or the two of a pair in the rule's order.</summary>
    public required ImmutableArray<PartCard> Parts { get; init; }

    public required QuantityCard Quantity { get; init; }
    public required LimitCard Limit { get; init; }
    public required SourceCard Source { get; init; }

    /// <summary>Null when the verdict is <see cref="Verdict.NotEvaluated"/>.</summary>
    public Evidence? Evidence { get; init; }

    /// <summary>Why it could not be evaluated, or which reading would decide it; null for the other verdicts.</summary>
    public string? Missing { get; init; }

    /// <summary>Sentences on what this finding rests on that nobody measured.</summary>
    public required ImmutableArray<string> Assumes { get; init; }

    /// <summary>Sentences on shields: which one stands between the two, or that one in the file does not.</summary>
    public ImmutableArray<string> Shields { get; init; } = [];

    /// <summary>That somebody takes the word for it; null where nobody does.</summary>
    public AcceptedCard? Accepted { get; init; }

    /// <summary>True where something stands open: the limit is not known to be met, and nobody has accepted that.</summary>
    public bool IsOpen => Verdict != Verdict.Conforms && Accepted is not { Holds: true };

    /// <summary>True where the value gets worse up to a typed end of the travel, so that nothing is known of what lies beyond; for the judging only.</summary>
    public bool WorsensBeyondTravel { get; init; }

    /// <summary>What the value rests on.</summary>
    public FindingBasis Basis { get; init; }

    /// <summary>Gaps that were read directly between the two parts.</summary>
    public ImmutableArray<DirectCard> Direct { get; init; } = [];
}

/// <summary>A gap that was read directly, mm.</summary>
/// <param name="Id">Its id in the file.</param>
/// <param name="ComputedMm">What the points make of it in its state; null where a part has no shape.</param>
/// <param name="TravelMm">The most that the two places can move against each other, where that is all that is known.</param>
/// <param name="Counts">The value comes from it.</param>
/// <param name="Disagrees">It contradicts the points by more than both give-or-takes explain.</param>
public sealed record DirectCard(
    string Id, string State, double MeasuredMm, double GiveOrTakeMm, double? ComputedMm, double? TravelMm, bool Counts, bool Disagrees, string Words);

/// <summary>A part as it is named to people. <paramref name="Name"/> is text as typed.</summary>
public sealed record PartCard(string Id, string Name, string Kind, string Body);

/// <summary>A quantity: its id in rules, its name and meaning in words, its unit (<c>mm</c> or <c>%</c>).</summary>
public sealed record QuantityCard(string Id, string Name, string Meaning, string Unit);

/// <summary>Where a limit comes from.</summary>
/// <param name="Basis"><c>published</c>, <c>common-practice</c>, <c>plain-fact</c> or <c>shop</c>.</param>
/// <param name="Known">How it is known: <c>read</c>, <c>second-hand</c>, <c>from-memory</c> or <c>none</c>.</param>
public sealed record SourceCard(string Basis, string Known, string Text);

/// <summary>What was found for a finding: the extreme over the pose space, its bound, its uncertainty, its pose, and what to draw.</summary>
public sealed record Evidence
{
    /// <summary>The extreme found, in the quantity's unit: a pose reaches it.</summary>
    public required double Value { get; init; }

    /// <summary>No reachable pose passes this, in the quantity's unit: "never less than" for an at-least limit.</summary>
    public required double Bound { get; init; }

    public required Grade BoundKind { get; init; }

    /// <summary>u, one standard deviation, in the quantity's unit.</summary>
    public required double StandardUncertainty { get; init; }

    /// <summary>k: give or take is k times u.</summary>
    public required double CoverageFactor { get; init; }

    public double GiveOrTake => CoverageFactor * StandardUncertainty;

    public required PoseCard Pose { get; init; }

    /// <summary>The two nearest surface points (or the hose's two ends) in the pose, in the parts' order.</summary>
    public required Vector3d WitnessFirst { get; init; }
    public required Vector3d WitnessSecond { get; init; }

    /// <summary>Every local worst place within reach of the worst, the worst first.</summary>
    public required ImmutableArray<BasinCard> Basins { get; init; }

    /// <summary>The readings that matter most, largest share first, at most six.</summary>
    public required ImmutableArray<ReadingShare> Readings { get; init; }

    public required DrawingCard Drawing { get; init; }
    public required ImmutableArray<PlotCard> Plots { get; init; }
    public required long Cells { get; init; }
}

/// <summary>One local worst place.</summary>
public sealed record BasinCard(double Value, double StandardUncertainty, PoseCard Pose);

/// <summary>A pose in words a mechanic can set. Empty coordinates: the parts never move against each other.</summary>
/// <param name="ActiveStops">Names of the stops that end the travel there.</param>
public sealed record PoseCard(ImmutableArray<PoseCoordinate> Coordinates, ImmutableArray<string> ActiveStops);

/// <summary>One coordinate of a pose.</summary>
/// <param name="Name">Such as <c>rear.left</c>.</param>
/// <param name="Unit"><c>mm</c> (travel from ride height, bump positive) or <c>deg</c>.</param>
/// <param name="Words">How to set it: "hub to fender rear left 512 mm (20-3/16 in), 88 mm into bump".</param>
public sealed record PoseCoordinate(string Name, double Value, string Unit, string Words);

/// <summary>A reading's share of the variance, 0 to 1.</summary>
/// <param name="Words">The reading as a person calls it: "point 3 of the path of Rear line".</param>
public sealed record ReadingShare(string Path, string Words, double Share, double WithinMm);

/// <summary>The two parts posed, to be drawn square to the closest approach.</summary>
public sealed record DrawingCard(ImmutableArray<DrawnPart> Parts);

/// <summary>A part in the pose, vehicle frame: a chain of thick line, or the convex pieces of its surface near the narrowest place.</summary>
/// <param name="Points">The chain; empty for a part drawn by its pieces.</param>
/// <param name="Dashed">True for something that stands for a distance, not a surface (a hose's straight line).</param>
public sealed record DrawnPart(string PartId, ImmutableArray<Vector3d> Points, double RadiusMm, bool Dashed)
{
    /// <summary>Pieces near the narrowest place; what lies farther away is left out.</summary>
    public ImmutableArray<DrawnPiece> Pieces { get; init; } = [];
}

/// <summary>A convex piece: all points within a radius of the hull of its corners.</summary>
public sealed record DrawnPiece(ImmutableArray<Vector3d> Corners, double RadiusMm);

/// <summary>The quantity over one coordinate, the others kept at the worst pose.</summary>
public sealed record PlotCard(string Coordinate, string Label, string Unit, double At, ImmutableArray<PlotPoint> Points);

/// <summary>A point of a plot. <paramref name="Reachable"/> is false beyond a stop.</summary>
public sealed record PlotPoint(double At, double Value, bool Reachable);
