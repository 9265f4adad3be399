using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Recording;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>Which items are asked and what an answer makes of them, what a whole vehicle is expected to have, and which pivots are open.</summary>
public sealed class RecordTests
{
    private static readonly RuleLibrary Base = RuleLibraryReader.Read([.. BaseLibrary.Files], QuantityCatalogue.Standard).Library!;

    private static readonly Vehicle Drover = OneLine.Vehicle("one-line-fixed");

    [Theory]
    [InlineData("is ok", ItemOutcome.Ok)]
    [InlineData("is not-ok", ItemOutcome.Fails)]
    [InlineData("is not-done", ItemOutcome.NotInspected)]
    [InlineData("absent", ItemOutcome.NotApplicable)]
    [InlineData("nothing", ItemOutcome.NotInspected)]
    public void An_answer_makes_the_outcome(string said, ItemOutcome outcome)
    {
        ImmutableArray<Answer> answers = said switch
        {
            "is ok" => [new Answer("brakes-bled", AnswerOutcome.Ok, null, null, "R.A.", null)],
            "is not-ok" => [new Answer("brakes-bled", AnswerOutcome.NotOk, null, null, "R.A.", "Spongy")],
            "is not-done" => [new Answer("brakes-bled", AnswerOutcome.NotDone, null, null, "R.A.", null)],
            _ => [],
        };
        ImmutableArray<Absence> absent = said == "absent" ? [new Absence("brakes-bled", "No circuit was opened")] : [];

        ItemCard item = Record(Drover with { Record = new InspectorsRecord { Answers = answers, Absent = absent } }).Items.Single(i => i.Id == "brakes-bled");

        item.Outcome.ShouldBe(outcome);
        item.Note.ShouldBe(said switch { "is not-ok" => "Spongy", "absent" => "No circuit was opened", _ => null });
    }

    [Theory]
    [InlineData("180 Nm", "painted", ItemOutcome.Ok)]
    [InlineData(null, "painted", ItemOutcome.NotInspected)]
    [InlineData("180 Nm", null, ItemOutcome.NotInspected)]
    public void A_yes_without_value_or_mark_counts_for_nothing_where_they_are_asked(string? value, string? mark, ItemOutcome outcome) => Record(Drover with
    {
        Record = new InspectorsRecord { Answers = [new Answer("track-bar-bolts-tightened", AnswerOutcome.Ok, value, mark, "R.A.", null)] },
    }).Items.Single(i => i.Id == "track-bar-bolts-tightened").Outcome.ShouldBe(outcome);

    [Fact]
    public void Only_items_that_fit_the_vehicle_are_asked()
    {
        string[] asked = [.. Record(Drover).Items.Select(i => i.Id)];

        asked.ShouldContain("track-bar-bolts-tightened");
        asked.ShouldContain("hose-clips-present");
        asked.ShouldNotContain("u-bolts-torqued");
        asked.ShouldNotContain("rod-end-nuts-pinned");
        asked.ShouldNotContain("body-lift-fastened");
        Record(Drover.Without("rear-brake-hose")).Items.ShouldNotContain(i => i.Id == "hose-clips-present");
    }

    [Fact]
    public void What_may_be_fitted_is_asked_until_the_file_says()
    {
        ItemCard unknown = Record(Drover with { Record = Drover.Record with { Fitted = null } }).Items.Single(i => i.Id == "body-lift-fastened");
        ItemCard fitted = Record(Drover with { Record = Drover.Record with { Fitted = ["body-lift"] } }).Items.Single(i => i.Id == "body-lift-fastened");

        unknown.Because.ShouldNotBeNull().ShouldContain("does not say");
        fitted.Because.ShouldBeNull();
    }

    [Fact]
    public void An_axle_whose_shaft_is_declared_absent_is_not_driven()
    {
        Record(Drover).Items.ShouldContain(i => i.Id == "driveshaft-turns-free");
        Record(Drover with { Record = Drover.Record with { Absent = [new Absence("rear-driveshaft", "Front-wheel drive")] } }).Items.ShouldNotContain(i => i.Id == "driveshaft-turns-free");
    }

    [Fact]
    public void A_part_inspection_expects_nothing() => Record(Drover).Coverage.ShouldBeEmpty();

    [Fact]
    public void A_whole_vehicle_is_held_against_what_it_is_expected_to_have()
    {
        Vehicle whole = Drover with { IsWhole = true, Record = Drover.Record with { Absent = [new Absence("fuel-line", "Electric")] } };

        ImmutableArray<CoverageCard> coverage = Record(whole).Coverage;

        Of(coverage, "rear-brake-hose").Outcome.ShouldBe(CoverageOutcome.Present);
        Of(coverage, "rear-brake-hose").Parts.ShouldBe(["rear-brake-hose"]);
        Of(coverage, "rear-shocks").Parts.ShouldBe(["rear-shock-left", "rear-shock-right"]);
        Of(coverage, "rear-driveshaft").Outcome.ShouldBe(CoverageOutcome.NotInspected);
        Of(coverage, "fuel-line").Outcome.ShouldBe(CoverageOutcome.Absent);
        Of(coverage, "fuel-line").Reason.ShouldBe("Electric");
        coverage.ShouldNotContain(c => c.Id == "rear-steering-rods");
    }

    [Fact]
    public void One_of_two_shocks_is_not_two()
    {
        ImmutableArray<CoverageCard> coverage = Record(Drover.Without("rear-shock-left") with { IsWhole = true }).Coverage;

        Of(coverage, "rear-shocks").Outcome.ShouldBe(CoverageOutcome.NotInspected);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(DriveWords.PartTime, true)]
    [InlineData(DriveWords.FullTime, true)]
    [InlineData(DriveWords.Rear, true)]
    [InlineData(DriveWords.Front, false)]
    public void An_axle_is_driven_unless_the_file_says_that_the_other_one_drives_alone(string? drive, bool isDriven)
    {
        RecordCard record = Record(Drover with { IsWhole = true, Description = Drover.Description with { Drive = drive } });

        record.Coverage.Any(c => c.Id == "rear-driveshaft").ShouldBe(isDriven);
        record.Items.Any(i => i.Id == "driveshaft-turns-free").ShouldBe(isDriven);
    }

    [Fact]
    public void A_danger_that_nobody_looked_at_holds_the_whole_vehicle_and_is_named()
    {
        InspectionResult result = OneLine.Inspect(Drover with { IsWhole = true }, library: Base);

        result.Decision.Kind.ShouldBe(DecisionKind.Held);
        result.Decision.Reasons.ShouldContain(r => r.Contains("Not inspected, and each is a danger", StringComparison.Ordinal) && r.Contains("Every hanging wheel turns free", StringComparison.Ordinal));
        result.Decision.Reasons.ShouldContain(r => r.StartsWith("Expected of a whole vehicle", StringComparison.Ordinal) && r.Contains("driveshaft, rear axle", StringComparison.Ordinal));
        result.NotInspected.ShouldNotContain(n => n.What == "The rest of the vehicle");
        result.NotInspected.ShouldContain(n => n.What == "Expected of a whole vehicle");
    }

    [Fact]
    public void A_whole_vehicle_with_everything_looked_at_is_clear()
    {
        InspectorsRecord record = Drover.Record with
        {
            Answers = [.. Base.Items.Select(i => new Answer(i.Id, AnswerOutcome.Ok, i.Units.IsEmpty ? null : $"1 {i.Units[0]}", i.NeedsMark ? "painted" : null, "R.A.", null))],
            Absent = [.. Base.Coverage.SelectMany(c => c.Expectation.Slots(Drover.Axles, [], null)).Select(s => new Absence(s.Id, "For this test"))],
        };

        OneLine.Inspect(Drover with { IsWhole = true, Record = record }, library: Base).Decision.Kind.ShouldBe(DecisionKind.Clear);
    }

    [Fact]
    public void An_answer_that_no_item_asks_for_is_said_to_be_unused() => OneLine.Inspect(Drover).NotInspected.Single(n => n.What == "Answers that were not used").Why
        .ShouldBe("the rules ask no such item: brake-pedal-hold, brakes-bled, track-bar-bolts-tightened");

    [Fact]
    public void A_pivot_is_open_until_it_is_tightened_at_ride_height()
    {
        Record(Drover).Pivots.ShouldAllBe(p => p.Outcome == PivotOutcome.AtRideHeight);
        Record(Drover).Pivots.Length.ShouldBe(8);
        Record(Drover with { Record = InspectorsRecord.Empty }).Pivots.ShouldAllBe(p => p.Outcome == PivotOutcome.Open);
    }

    [Fact]
    public void Of_two_that_contradict_each_other_the_worse_counts()
    {
        Tightening[] both = [.. Drover.Record.Tightened, new Tightening("rear", ["track-bar-axle"], false, "R.A.", null)];

        Record(Drover with { Record = Drover.Record with { Tightened = [.. both] } }).Pivots.Single(p => p.Id == "rear-track-bar-axle").Outcome.ShouldBe(PivotOutcome.Hanging);
    }

    [Theory]
    [InlineData("leaf-springs", 6)]
    [InlineData("radius-arms", 8)]
    [InlineData("double-wishbones", 8)]
    [InlineData("split-beams", 4)]
    [InlineData("five-link", 10)]
    public void Every_layout_with_bushes_has_its_pivots(string layout, int pivots)
    {
        Vehicle vehicle = BindingVehicle(layout);

        TighteningAudit.Of(vehicle.Axles[0], InspectorsRecord.Empty).Count().ShouldBe(pivots);
    }

    private static Vehicle BindingVehicle(string name) => Files.InspectionFileReader.Read(
        new Files.InspectionFile(name, ClearanceCheck.Tests.Shared.FixtureFiles.Bytes("layouts", name + ".yaml"), _ => null)).Vehicle.ShouldNotBeNull();

    private static RecordCard Record(Vehicle vehicle) => RecordBuilder.Build(vehicle, Base);

    private static CoverageCard Of(ImmutableArray<CoverageCard> coverage, string id) => coverage.Single(c => c.Id == id);
}
