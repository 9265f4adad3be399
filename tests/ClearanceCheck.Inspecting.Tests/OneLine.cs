using System.Collections.Immutable;
using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The smallest fixture and its inspection with three plain rules of the tests' own.</summary>
internal static class OneLine
{
    public const string Exhaust = "line-near-exhaust";
    public const string Moving = "line-near-moving-part";
    public const string Hose = "hose-short";

    public static Vehicle Vehicle(string fixture = "one-line")
    {
        InspectionReading reading = InspectionFileReader.Read(
            new InspectionFile("inspection.yaml", FixtureFiles.Bytes(fixture, "inspection.yaml"), file => FixtureFiles.Beside(fixture, file)));
        return reading.Vehicle.ShouldNotBeNull();
    }

    public static RuleLibrary Library(params string[] notLoaded) => new(
        "tests",
        "1.0.0",
        "00",
        [
            Rule(Exhaust, "gap", "brake-line", "hot-exhaust", 50, Severity.Warning),
            Rule(Moving, "gap", "brake-line", "suspension", 19, Severity.Warning) with { OnlyWhen = [RuleFacts.Moving] },
            Rule(Hose, "hose-slack", "brake-hose", null, 2, Severity.Danger),
        ],
        [.. notLoaded]);

    public static Rule Rule(string id, string quantity, string kind, string? toGroup, double atLeast, Severity severity) => new()
    {
        Id = id,
        Title = id,
        Severity = severity,
        Quantity = quantity,
        Part = new PartSelector { Kinds = [kind] },
        To = toGroup is null ? null : new PartSelector { Groups = [toGroup] },
        Limit = new RuleLimit(atLeast, null),
        Source = new RuleSource("common-practice", "none", "a figure for tests"),
        Advice = "Move it.",
    };

    public static InspectionResult Inspect(Vehicle vehicle, int threads = 1, RuleLibrary? library = null) => Inspector.Run(new InspectionRequest
    {
        Vehicle = vehicle,
        Library = library ?? Library(),
        ProgramVersion = "0",
        Inputs = [],
        Threads = threads,
    }).Result.ShouldNotBeNull();

    public static Finding Find(this InspectionResult result, string rule, string part) =>
        result.Findings.Single(f => f.Rule == rule && f.Parts.Any(p => p.Id == part));

    /// <summary>The vehicle with every number changed.</summary>
    public static Vehicle With(this Vehicle vehicle, Func<Parameter, Parameter> change) =>
        vehicle with { Parameters = new ParameterVector([.. vehicle.Parameters.Parameters.Select(change)]) };

    public static Vehicle Without(this Vehicle vehicle, params string[] parts) =>
        vehicle with { Parts = [.. vehicle.Parts.Where(p => !parts.Contains(p.Id))] };
}
