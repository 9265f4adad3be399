using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>A rule that found nothing to judge says which clause kept it from its parts.</summary>
public sealed class MatchedNothingTests
{
    [Fact]
    public void The_fact_that_its_pairs_lack_is_named() => Reason(
        OneLine.Vehicle().Without("axle-brake-line"),
        OneLine.Rule("still", "gap", "brake-line", "hot-exhaust", 50, Severity.Warning) with { OnlyWhen = [RuleFacts.Moving] })
        .ShouldBe("excluded by only-when: none of its parts is moving");

    [Fact]
    public void A_meant_contact_is_named()
    {
        Vehicle vehicle = OneLine.Vehicle().Without("axle-brake-line");
        vehicle = vehicle with { Parts = [.. vehicle.Parts.Select(p => p.Id == "chassis-brake-line" ? p with { Touches = ["tailpipe"] } : p)] };

        Reason(vehicle, OneLine.Rule("meant", "gap", "brake-line", "hot-exhaust", 50, Severity.Warning)).ShouldBe("excluded by touches: the file says that its parts are meant to touch");
    }

    [Fact]
    public void Data_that_is_missing_is_named() => Reason(
        OneLine.Vehicle(), OneLine.Rule("hose", "gap", "brake-hose", "hot-exhaust", 50, Severity.Warning))
        .ShouldStartWith("data missing: ");

    private static string Reason(Vehicle vehicle, Rule rule) =>
        OneLine.Inspect(vehicle, library: OneLine.Library() with { Rules = [rule] }).MatchedNothing.Single().Reason;
}
