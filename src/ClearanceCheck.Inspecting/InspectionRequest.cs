using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting;

/// <summary>Everything an inspection is made from; nothing else is read.</summary>
public sealed record InspectionRequest
{
    public required Vehicle Vehicle { get; init; }

    public required RuleLibrary Library { get; init; }

    public QuantityCatalogue Quantities { get; init; } = QuantityCatalogue.Standard;

    public required string ProgramVersion { get; init; }

    public required ImmutableArray<InputFile> Inputs { get; init; }

    /// <summary>The day of the inspection; null where none was given: then nothing that has a last day counts.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Give or take is this many standard uncertainties.</summary>
    public double CoverageFactor { get; init; } = MeasureRequest.UsualCoverageFactor;

    /// <summary>How many pairs are searched at once; the result does not depend on it.</summary>
    public int Threads { get; init; } = 1;
}
