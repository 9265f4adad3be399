using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>A record with every outcome of items, coverage and pivots.</summary>
internal static class SampleRecord
{
    private static readonly SourceCard PlainFact = new("plain-fact", "none", "Air can be squeezed: plain fact.");

    public static RecordCard Whole() => new()
    {
        IsWhole = true,
        Items =
        [
            Item("brakes-bled", "Brakes bled", Severity.Danger, ItemOutcome.Fails) with { By = "R.A.", Note = "Spongy: bled once, to be bled again" },
            Item("wheel-nuts-tightened", "Wheel nuts tightened", Severity.Danger, ItemOutcome.Ok) with { Family = "wheels", Units = ["Nm", "lb-ft"], NeedsMark = true, Value = "115 Nm", Mark = "painted", By = "R.A." },
            Item("body-lift-fastened", "Body lift fastened", Severity.Warning, ItemOutcome.NotInspected) with { Family = "bodywork", NeedsMark = true, Because = "the file does not say whether it has this (body-lift): write `fitted`" },
            Item("headlamps-aimed", "Headlamps aimed", Severity.Caution, ItemOutcome.NotApplicable) with { Family = "wiring-and-sensors", Note = "None fitted" },
            Item("wheel-nuts-again", "Wheel nuts again", Severity.Danger, ItemOutcome.NotInspected) with { Family = "tightening", Gate = ChecklistGate.AfterFirstDrive, Units = ["km", "mi"] },
            Item("local-law-looked-up", "Local law looked up", Severity.Notice, ItemOutcome.NotInspected) with { Family = "law" },
        ],
        Coverage =
        [
            new CoverageCard("rear-brake-hose", "brake hose, rear axle", Severity.Danger, "Nobody knows whether it is pulled tight.", PlainFact, CoverageOutcome.Present, 1, ["rear-hose"], null),
            new CoverageCard("rear-driveshaft", "driveshaft, rear axle", Severity.Danger, "Nobody knows whether it binds.", PlainFact, CoverageOutcome.NotInspected, 1, [], null),
            new CoverageCard("fuel-line", "fuel line", Severity.Danger, "Nobody knows what it comes near.", PlainFact, CoverageOutcome.Absent, 1, [], "Electric"),
        ],
        Pivots =
        [
            new PivotCard("rear-track-bar-frame", "rear", "rear axle, track bar frame", PivotOutcome.AtRideHeight, "R.A.", "painted"),
            new PivotCard("rear-track-bar-axle", "rear", "rear axle, track bar axle", PivotOutcome.Hanging, "R.A.", null),
            new PivotCard("rear-upper-link-axle", "rear", "rear axle, upper link axle", PivotOutcome.Open, null, null),
        ],
        Temporary = [new TemporaryCard("front-shaft-out", "Front shaft out", "No four-wheel drive", "shaft fitted", "R.A.")],
    };

    private static ItemCard Item(string id, string title, Severity severity, ItemOutcome outcome) => new()
    {
        Id = id,
        Title = title,
        Ask = "Look at it.",
        Family = "brakes",
        Gate = ChecklistGate.BeforeFirstDrive,
        Severity = severity,
        Consequence = "It fails.",
        Source = PlainFact,
        Units = [],
        NeedsMark = false,
        Outcome = outcome,
    };
}
