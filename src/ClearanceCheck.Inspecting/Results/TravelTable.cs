using System.Collections.Immutable;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>Where the wheels of one axle can go: its named poses, what ends each, and how everything stands there.</summary>
/// <param name="Axle">Its name.</param>
/// <param name="Columns">What is told of each pose.</param>
/// <param name="Rows">The poses, ride height first.</param>
/// <param name="Paths">Which stops are met in which order, straight from ride height.</param>
public sealed record TravelTable(string Axle, ImmutableArray<TravelColumn> Columns, ImmutableArray<TravelRow> Rows, ImmutableArray<TravelPath> Paths);

/// <summary>A column of a travel table.</summary>
/// <param name="Id">Stable name: <c>left.hub-to-fender</c>, <c>axle.shift</c>, <c>rear-shock-left.length</c>.</param>
/// <param name="Label">What people read; part names as typed.</param>
/// <param name="Unit"><c>mm</c> or <c>deg</c>.</param>
public sealed record TravelColumn(string Id, string Label, string Unit);

/// <summary>A pose of a travel table.</summary>
/// <param name="Pose">Its name in commands: <c>full-droop</c>.</param>
/// <param name="Label">Its name for people: "both wheels hanging".</param>
/// <param name="Answer"><c>reached</c>, <c>stopped</c> (a stop lies before it), <c>unreachable</c> (proved) or <c>not-solved</c>.</param>
/// <param name="EndedBy">What ends it there.</param>
/// <param name="Passed">Stops that it lies beyond.</param>
/// <param name="Values">One a column; null where it is not known.</param>
public sealed record TravelRow(
    string Pose, string Label, string Answer, ImmutableArray<TravelEnd> EndedBy, ImmutableArray<TravelPassed> Passed, ImmutableArray<double?> Values);

/// <summary>What ends a pose.</summary>
/// <param name="Id">The stop's name, or what the end is called in machine output.</param>
/// <param name="Words">For people; part names as typed.</param>
/// <param name="IsStop">False for the end of the travel looked at and for links that let nothing be solved beyond.</param>
public sealed record TravelEnd(string Id, string Words, bool IsStop);

/// <summary>A stop that a pose lies beyond.</summary>
/// <param name="BeyondMm">By how much, mm, positive.</param>
public sealed record TravelPassed(string Id, string Words, double BeyondMm);

/// <summary>The stops on a straight path from ride height.</summary>
/// <param name="Way">The way: <c>both-down</c>.</param>
/// <param name="Label">For people: "both wheels down".</param>
/// <param name="Unit">Of the figures: <c>mm</c> of each wheel that moves, or <c>deg</c> of steering.</param>
/// <param name="EndOfRange">Where the travel looked at ends.</param>
/// <param name="EndsWithoutStop">Whether that comes before any stop.</param>
/// <param name="Met">The stops in order, up to 30 mm (or 5 degrees) beyond the first.</param>
public sealed record TravelPath(string Way, string Label, string Unit, double EndOfRange, bool EndsWithoutStop, ImmutableArray<TravelMet> Met);

/// <summary>A stop on a path.</summary>
/// <param name="At">Where, in the path's unit; zero when ride height lies beyond it.</param>
/// <param name="BeyondAtRideMm">By how much ride height lies beyond it, mm; zero else.</param>
public sealed record TravelMet(string Id, string Words, double At, double BeyondAtRideMm);
