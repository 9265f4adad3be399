namespace ClearanceCheck.Rules.Tests.Hazards;

/// <summary>Every hazard after a lift is served by rules, items or expectations that exist, or says what it waits for.</summary>
public sealed class HazardTableTests
{
    [Fact]
    public void Every_hazard_is_served_or_waits_and_nothing_of_the_library_is_without_one() => HazardFaults.Of(HazardTable.Rows, Libraries.Base).ShouldBeEmpty();

    [Fact]
    public void Every_family_of_hazards_has_its_rows() => HazardTable.Rows.Select(r => r.Family).Distinct().ShouldBe(
    [
        "brake hoses", "brake hydraulics", "brake and fuel tubes", "exhaust", "tires", "wheels", "steering", "driveline", "springs and shocks", "links and axle",
        "alignment", "bodywork", "wiring and sensors", "tightening", "temporary state", "road test", "pairs that no rule names",
    ]);

    [Fact]
    public void What_waits_names_what_it_waits_for() => HazardTable.Rows.Where(r => r.Waits is not null).ShouldAllBe(r => r.Waits!.Contains(':'));

    [Fact]
    public void A_row_that_names_what_is_not_there_is_noticed() =>
        HazardFaults.Of([.. HazardTable.Rows, new HazardRow("exhaust", "an invention") { ServedBy = ["exhaust-near-parrot"] }], Libraries.Base)
            .ShouldBe(["exhaust, an invention: exhaust-near-parrot is not in the library"]);

    [Fact]
    public void A_row_that_nothing_serves_is_noticed() =>
        HazardFaults.Of([.. HazardTable.Rows, new HazardRow("exhaust", "an invention")], Libraries.Base)
            .ShouldBe(["exhaust, an invention: nothing serves it and nothing says why"]);

    [Fact]
    public void A_rule_without_a_hazard_is_noticed() =>
        HazardFaults.Of([.. HazardTable.Rows.Where(r => !r.ServedBy.Contains("fan-near-shroud"))], Libraries.Base).ShouldContain("fan-near-shroud serves no hazard of the table");
}
