using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Judging;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;
using ClearanceCheck.Rules.Checklists;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The decision as a table: one thing against an otherwise clean vehicle, once with the whole vehicle in scope and once with a part of it.</summary>
public sealed class DecisionTableTests
{
    private static readonly Lazy<Finding> Conforming = new(() => OneLine.Inspect(OneLine.Vehicle("one-line-fixed")).Findings.First(f => f.Severity == Severity.Danger) with { Assumes = [] });

    public static TheoryData<string, DecisionKind, DecisionKind> Rows { get; } = new()
    {
        { "nothing", DecisionKind.Clear, DecisionKind.None },
        { "danger fails", DecisionKind.Held, DecisionKind.Held },
        { "danger undecided", DecisionKind.Held, DecisionKind.Held },
        { "danger not evaluated", DecisionKind.Held, DecisionKind.Held },
        { "danger conforms on something assumed", DecisionKind.Conditions, DecisionKind.Conditions },
        { "rule not loaded", DecisionKind.Held, DecisionKind.Held },
        { "warning fails", DecisionKind.Conditions, DecisionKind.Conditions },
        { "warning undecided", DecisionKind.Conditions, DecisionKind.Conditions },
        { "warning not evaluated", DecisionKind.Conditions, DecisionKind.Conditions },
        { "warning conforms on something assumed", DecisionKind.Clear, DecisionKind.None },
        { "caution fails", DecisionKind.Clear, DecisionKind.None },
        { "notice not evaluated", DecisionKind.Clear, DecisionKind.None },
        { "danger item found wrong", DecisionKind.Held, DecisionKind.Held },
        { "danger item found wrong after the drive", DecisionKind.Held, DecisionKind.Held },
        { "danger item unanswered", DecisionKind.Held, DecisionKind.None },
        { "danger item of the second gate unanswered", DecisionKind.Clear, DecisionKind.None },
        { "danger item does not apply", DecisionKind.Clear, DecisionKind.None },
        { "warning item found wrong", DecisionKind.Conditions, DecisionKind.Conditions },
        { "warning item unanswered", DecisionKind.Conditions, DecisionKind.None },
        { "caution item found wrong", DecisionKind.Clear, DecisionKind.None },
        { "danger part expected and missing", DecisionKind.Held, DecisionKind.None },
        { "danger part declared absent", DecisionKind.Clear, DecisionKind.None },
        { "warning part expected and missing", DecisionKind.Conditions, DecisionKind.None },
        { "caution part expected and missing", DecisionKind.Clear, DecisionKind.None },
        { "pivot open", DecisionKind.Conditions, DecisionKind.Conditions },
        { "pivot tightened hanging", DecisionKind.Conditions, DecisionKind.Conditions },
        { "pivot tightened at ride height", DecisionKind.Clear, DecisionKind.None },
        { "temporary state", DecisionKind.Conditions, DecisionKind.Conditions },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void One_thing_alone_decides(string row, DecisionKind whole, DecisionKind part)
    {
        Decide(row, isWhole: true).Kind.ShouldBe(whole);
        Decide(row, isWhole: false).Kind.ShouldBe(part);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_decision_against_a_drive_has_its_reason_and_its_job(string row, DecisionKind whole, DecisionKind part)
    {
        foreach ((bool isWhole, DecisionKind kind) in new[] { (true, whole), (false, part) })
        {
            DecisionCard decision = Decide(row, isWhole);

            decision.Reasons.IsEmpty.ShouldBe(kind is DecisionKind.Clear or DecisionKind.None, row);
            if (kind is DecisionKind.Held or DecisionKind.Conditions) decision.DoThis.ShouldNotBeEmpty(row);
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void What_holds_still_holds_beside_a_condition(string row, DecisionKind whole, DecisionKind part)
    {
        _ = part;
        (ImmutableArray<Finding> findings, ImmutableArray<string> notLoaded, RecordCard record) = Against(row);
        RecordCard with = record with { IsWhole = true, Temporary = [new TemporaryCard("t", "Front shaft out", "No four-wheel drive", "shaft fitted", "R.A.")] };

        DecisionBuilder.Build(findings, notLoaded, with).Kind.ShouldBe(whole == DecisionKind.Held ? DecisionKind.Held : DecisionKind.Conditions);
    }

    [Fact]
    public void The_reading_that_lifts_an_assumption_is_named()
    {
        DecisionCard decision = Decide("danger conforms on something assumed", isWhole: true);

        decision.Reasons.Single().ShouldContain("The crush of the stop was not typed.");
        decision.DoThis.Single().Text.ShouldContain("Measure it and say how well.");
    }

    [Fact]
    public void Many_unanswered_lines_are_one_reason_that_counts_the_rest()
    {
        ImmutableArray<ItemCard> items = [.. Enumerable.Range(1, 9).Select(i => Item(Severity.Danger, ItemOutcome.NotInspected) with { Title = $"Line {i}" })];

        DecisionBuilder.Build([], [], new RecordCard { IsWhole = true, Items = items }).Reasons.ShouldBe(
            ["Not inspected, and each is a danger: Line 1; Line 2; Line 3; Line 4; Line 5; Line 6; and 3 more."]);
    }

    private static DecisionCard Decide(string row, bool isWhole)
    {
        (ImmutableArray<Finding> findings, ImmutableArray<string> notLoaded, RecordCard record) = Against(row);
        return DecisionBuilder.Build(findings, notLoaded, record with { IsWhole = isWhole });
    }

    private static (ImmutableArray<Finding> Findings, ImmutableArray<string> NotLoaded, RecordCard Record) Against(string row)
    {
        RecordCard none = RecordCard.Empty;
        return row switch
        {
            "nothing" => ([Conforming.Value], [], none),
            "danger fails" => ([Of(Severity.Danger, Verdict.Fails)], [], none),
            "danger undecided" => ([Of(Severity.Danger, Verdict.Undecided)], [], none),
            "danger not evaluated" => ([Of(Severity.Danger, Verdict.NotEvaluated)], [], none),
            "danger conforms on something assumed" => ([Of(Severity.Danger, Verdict.Conforms) with { Assumes = ["The crush of the stop was not typed."] }], [], none),
            "rule not loaded" => ([], ["a rule with a misspelt key"], none),
            "warning fails" => ([Of(Severity.Warning, Verdict.Fails)], [], none),
            "warning undecided" => ([Of(Severity.Warning, Verdict.Undecided)], [], none),
            "warning not evaluated" => ([Of(Severity.Warning, Verdict.NotEvaluated)], [], none),
            "warning conforms on something assumed" => ([Of(Severity.Warning, Verdict.Conforms) with { Assumes = ["The crush of the stop was not typed."] }], [], none),
            "caution fails" => ([Of(Severity.Caution, Verdict.Fails)], [], none),
            "notice not evaluated" => ([Of(Severity.Notice, Verdict.NotEvaluated)], [], none),
            "danger item found wrong" => ([], [], none with { Items = [Item(Severity.Danger, ItemOutcome.Fails)] }),
            "danger item found wrong after the drive" => ([], [], none with { Items = [Item(Severity.Danger, ItemOutcome.Fails) with { Gate = ChecklistGate.AfterFirstDrive }] }),
            "danger item unanswered" => ([], [], none with { Items = [Item(Severity.Danger, ItemOutcome.NotInspected)] }),
            "danger item of the second gate unanswered" => ([], [], none with { Items = [Item(Severity.Danger, ItemOutcome.NotInspected) with { Gate = ChecklistGate.AfterFirstDrive }] }),
            "danger item does not apply" => ([], [], none with { Items = [Item(Severity.Danger, ItemOutcome.NotApplicable)] }),
            "warning item found wrong" => ([], [], none with { Items = [Item(Severity.Warning, ItemOutcome.Fails)] }),
            "warning item unanswered" => ([], [], none with { Items = [Item(Severity.Warning, ItemOutcome.NotInspected)] }),
            "caution item found wrong" => ([], [], none with { Items = [Item(Severity.Caution, ItemOutcome.Fails)] }),
            "danger part expected and missing" => ([], [], none with { Coverage = Row(Severity.Danger, CoverageOutcome.NotInspected, row) }),
            "danger part declared absent" => ([], [], none with { Coverage = Row(Severity.Danger, CoverageOutcome.Absent, row) }),
            "warning part expected and missing" => ([], [], none with { Coverage = Row(Severity.Warning, CoverageOutcome.NotInspected, row) }),
            "caution part expected and missing" => ([], [], none with { Coverage = Row(Severity.Caution, CoverageOutcome.NotInspected, row) }),
            "pivot open" => ([], [], none with { Pivots = [Pivot(PivotOutcome.Open)] }),
            "pivot tightened hanging" => ([], [], none with { Pivots = [Pivot(PivotOutcome.Hanging)] }),
            "pivot tightened at ride height" => ([], [], none with { Pivots = [Pivot(PivotOutcome.AtRideHeight)] }),
            "temporary state" => ([], [], none with { Temporary = [new TemporaryCard("t", "Front shaft out", "No four-wheel drive", "shaft fitted", "R.A.")] }),
            _ => throw new ArgumentOutOfRangeException(nameof(row)),
        };
    }

    private static Finding Of(Severity severity, Verdict verdict) => Conforming.Value with { Severity = severity, Verdict = verdict, Missing = verdict == Verdict.Conforms ? null : "measure it" };

    private static ItemCard Item(Severity severity, ItemOutcome outcome) => new()
    {
        Id = "brakes-bled",
        Title = "Brakes bled",
        Ask = "Bleed them.",
        Family = "brakes",
        Gate = ChecklistGate.BeforeFirstDrive,
        Severity = severity,
        Consequence = "The pedal goes to the floor.",
        Source = new SourceCard("plain-fact", "none", "Plain fact."),
        Units = [],
        NeedsMark = false,
        Outcome = outcome,
    };

    // A part inspection expects nothing, and its coverage is empty.
    private static ImmutableArray<CoverageCard> Row(Severity severity, CoverageOutcome outcome, string title) =>
        [new CoverageCard("rear-brake-hose", title, severity, "Nobody knows.", new SourceCard("plain-fact", "none", "Plain fact."), outcome, 1, [], outcome == CoverageOutcome.Absent ? "on the shaft" : null)];

    private static PivotCard Pivot(PivotOutcome outcome) => new("rear-track-bar-axle", "rear", "rear axle, track bar axle", outcome, outcome == PivotOutcome.Open ? null : "R.A.", null);
}
