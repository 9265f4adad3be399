using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results.Record;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>Everything an inspection says, as plain data. Millimetres, degrees and percent; vehicle frame (x forward, y left, z up).</summary>
/// <remarks>The HTML report and <c>findings.json</c> are two views of it; neither computes anything of its own.</remarks>
public sealed record InspectionResult
{
    public required VehicleCard Vehicle { get; init; }

    /// <summary>The axles inspected; all of them where the whole vehicle is in scope.</summary>
    public required ImmutableArray<string> Scope { get; init; }

    public required LibraryCard Library { get; init; }
    public required DecisionCard Decision { get; init; }

    /// <summary>Worst first: not conforming before conforming, then by severity, then by id.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Checklist, coverage, tightening audit and temporary states.</summary>
    public RecordCard Record { get; init; } = RecordCard.Empty;

    public required ImmutableArray<NotInspectedItem> NotInspected { get; init; }
    public required ImmutableArray<UnmatchedRule> MatchedNothing { get; init; }
    public required ImmutableArray<ExemptZone> Exempt { get; init; }
    public required ImmutableArray<Assumption> Assumptions { get; init; }
    public required ImmutableArray<ReachCard> Reach { get; init; }

    /// <summary>One table an axle.</summary>
    public required ImmutableArray<TravelTable> Travel { get; init; }

    public required ImmutableArray<MeasurementRow> Measurements { get; init; }
    public required Provenance Provenance { get; init; }
}

/// <summary>The vehicle as the inspector described it; every text as typed, none trusted.</summary>
public sealed record VehicleCard
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

    /// <summary>Where zero is, what is level, how the frame was found.</summary>
    public string? Datum { get; init; }
}

/// <summary>Something that was not looked at, and why.</summary>
public sealed record NotInspectedItem(string What, string Why);

/// <summary>A rule that found nothing to judge, with the reason.</summary>
public sealed record UnmatchedRule(string Rule, string Title, string Reason);

/// <summary>A region in which two parts are meant to touch and were not judged.</summary>
/// <param name="Parts">The two parts' ids, sorted.</param>
/// <param name="Around">What the region surrounds, in words.</param>
/// <param name="RadiusMm">Its size; null when the whole pair is left out by <c>touches</c>.</param>
public sealed record ExemptZone(ImmutableArray<string> Parts, string Around, double? RadiusMm, string Why);

/// <summary>A value that nobody typed.</summary>
/// <param name="Path">The element it belongs to, such as <c>parts/rear-hose/within</c>.</param>
public sealed record Assumption(string Path, string Text);

/// <summary>How far one coordinate of the pose space goes in any pose, and what ends it.</summary>
/// <param name="Unit"><c>mm</c>, or <c>deg</c> for steering.</param>
/// <param name="Coordinate">Such as <c>rear.left</c>.</param>
public sealed record ReachCard(string Coordinate, string Label, string Unit, double Lowest, double Highest, string EndsLowest, string EndsHighest);

/// <summary>One reading as typed, and what the model made of it.</summary>
/// <param name="WithinMm">Half-width that the model gave it.</param>
public sealed record MeasurementRow(string Path, string Typed, Geometry.Vector3d? PointMm, double? ValueMm, double WithinMm, bool WithinAssumed);

/// <summary>What this result was made from. The same input gives the same file.</summary>
public sealed record Provenance
{
    public required string ProgramVersion { get; init; }
    public required ImmutableArray<InputFile> Inputs { get; init; }

    /// <summary>Name and value of each setting of the run, in a fixed order.</summary>
    public required ImmutableArray<Setting> Settings { get; init; }

    public required long Cells { get; init; }
    public required long Solves { get; init; }
    public required int PairsAsked { get; init; }
    public required int PairsRefusedAtRoot { get; init; }

    /// <summary>The first 12 characters of the hash over inputs, rules and program version: stands on every printed page.</summary>
    public required string ReportId { get; init; }
}

/// <summary>A file that was read: its bare name, its size and its SHA-256.</summary>
public sealed record InputFile(string Name, long Bytes, string Sha256);

/// <summary>A named setting of the run.</summary>
public sealed record Setting(string Name, string Value);
