using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Tests.Oracle;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The fixture one-line and its clean twin, against brute force that shares no code with the engine.</summary>
public sealed class OneLineTests
{
    private static readonly Lazy<InspectionResult> Shared = new(() => OneLine.Inspect(OneLine.Vehicle()));

    private static InspectionResult Result => Shared.Value;

    [Fact]
    public void The_axle_line_fails_against_the_tailpipe_where_brute_force_finds_it()
    {
        Finding finding = Result.Find(OneLine.Exhaust, "axle-brake-line");

        finding.Verdict.ShouldBe(Verdict.Fails);
        Matches(finding, IndependentInspection.AxleLineToTailpipe(), 0.15);
    }

    [Fact]
    public void The_frame_line_is_too_close_to_call_against_the_axle_tube_where_brute_force_finds_it()
    {
        Finding finding = Result.Find(OneLine.Moving, "chassis-brake-line");

        finding.Verdict.ShouldBe(Verdict.Undecided);
        finding.Missing.ShouldNotBeNull();
        Matches(finding, IndependentInspection.FrameLineToTube(), 0.15);
    }

    [Fact]
    public void The_hose_is_too_short_by_what_brute_force_finds()
    {
        Finding finding = Result.Find(OneLine.Hose, "rear-brake-hose");

        finding.Verdict.ShouldBe(Verdict.Fails);
        Matches(finding, IndependentInspection.HoseSlack(262), 0.02);
    }

    [Fact]
    public void A_failing_danger_holds_the_vehicle_and_the_first_line_says_what_to_do()
    {
        Result.Decision.Kind.ShouldBe(DecisionKind.Held);
        Result.Decision.DoThis[0].Text.ShouldStartWith("Brake hose to the rear axle: needs a free length");
        Result.Findings[0].Severity.ShouldBe(Severity.Danger);
    }

    [Fact]
    public void Every_bound_is_proved_and_none_is_above_its_value()
    {
        foreach (Evidence evidence in Result.Findings.Select(f => f.Evidence.ShouldNotBeNull()))
        {
            evidence.BoundKind.ShouldBe(Grade.Proven);
            evidence.Bound.ShouldBeLessThanOrEqualTo(evidence.Value);
        }
    }

    [Fact]
    public void Nothing_stands_against_the_clean_twin()
    {
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle("one-line-fixed"));

        result.Findings.ShouldAllBe(f => f.Verdict == Verdict.Conforms);
        result.Decision.Kind.ShouldBe(DecisionKind.None);
    }

    [Fact]
    public void A_vehicle_moved_as_a_whole_gets_the_same_findings()
    {
        Vehicle moved = OneLine.Vehicle().With(p => p.Path[^2..] switch
        {
            ".x" => p with { ValueMm = p.ValueMm + 137 },
            ".y" => p with { ValueMm = p.ValueMm - 12 },
            ".z" => p with { ValueMm = p.ValueMm + 41 },
            _ => p,
        });

        SameValues(OneLine.Inspect(moved), swapped: false);
    }

    [Fact]
    public void A_mirrored_vehicle_gets_the_same_findings_with_left_and_right_exchanged()
    {
        Vehicle mirrored = OneLine.Vehicle().With(p => p.Path.EndsWith(".y", StringComparison.Ordinal) ? p with { ValueMm = -p.ValueMm } : p);
        Axle axle = mirrored.Axles[0];

        SameValues(OneLine.Inspect(mirrored with { Axles = [axle with { Left = axle.Right, Right = axle.Left }] }), swapped: true);
    }

    [Fact]
    public void Two_threads_give_the_same_result_as_one()
    {
        InspectionResult two = OneLine.Inspect(OneLine.Vehicle(), threads: 2);

        two.Findings.Select(f => (f.Id, f.Verdict, f.Evidence!.Value, f.Evidence.Bound, f.Evidence.StandardUncertainty, f.Evidence.Cells))
            .ShouldBe(Result.Findings.Select(f => (f.Id, f.Verdict, f.Evidence!.Value, f.Evidence.Bound, f.Evidence.StandardUncertainty, f.Evidence.Cells)));
        two.Provenance.Solves.ShouldBe(Result.Provenance.Solves);
    }

    [Fact]
    public void Doubling_within_doubles_the_give_or_take()
    {
        InspectionResult doubled = OneLine.Inspect(OneLine.Vehicle().With(p => p with { HalfWidthMm = 2 * p.HalfWidthMm }));

        foreach (Finding finding in Result.Findings)
        {
            double twice = doubled.Findings.Single(f => f.Id == finding.Id).Evidence!.GiveOrTake;
            (twice / finding.Evidence!.GiveOrTake).ShouldBe(2, 0.02);
        }
    }

    [Fact]
    public void Without_its_stops_the_travel_ends_at_a_typed_number_and_that_is_said()
    {
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle().Without("rear-bump-stop-left", "rear-bump-stop-right", "rear-shock-left", "rear-shock-right"));

        result.NotInspected.ShouldContain(i => i.What.StartsWith("rear left wheel: bump beyond", StringComparison.Ordinal));
        result.NotInspected.ShouldContain(i => i.What.StartsWith("rear right wheel: droop beyond", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_worst_where_nothing_stops_the_wheel_is_not_called_clear()
    {
        // The clean twin without its shocks: the hose is long enough up to the typed end of the droop, and nobody knows what is beyond.
        Vehicle vehicle = OneLine.Vehicle("one-line-fixed").Without("rear-shock-left", "rear-shock-right")
            .With(p => p.Path == "axles/rear/travel/droop" ? p with { ValueMm = 108 } : p);

        InspectionResult result = OneLine.Inspect(vehicle);

        Finding hose = result.Find(OneLine.Hose, "rear-brake-hose");
        (hose.Evidence!.Bound - hose.Evidence.GiveOrTake).ShouldBeGreaterThan(2);
        hose.Verdict.ShouldBe(Verdict.Undecided);
        hose.Missing.ShouldNotBeNull().ShouldContain("nothing in the file stops the wheel there");
        result.Decision.Kind.ShouldBe(DecisionKind.Held);
    }

    [Fact]
    public void A_rule_that_was_not_loaded_holds_a_clean_vehicle()
    {
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle("one-line-fixed"), library: OneLine.Library("a rule with a misspelt key"));

        result.Decision.Kind.ShouldBe(DecisionKind.Held);
    }

    [Fact]
    public void A_rule_without_a_part_to_judge_says_so()
    {
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle().Without("tailpipe"));

        result.MatchedNothing.Single().Rule.ShouldBe(OneLine.Exhaust);
        result.MatchedNothing.Single().Reason.ShouldBe("no part of group hot-exhaust is in the file");
    }

    [Fact]
    public void A_pair_that_is_meant_to_touch_is_listed_and_not_judged()
    {
        Vehicle vehicle = OneLine.Vehicle();
        Part line = vehicle.Parts.Single(p => p.Id == "axle-brake-line");
        InspectionResult result = OneLine.Inspect(vehicle with { Parts = vehicle.Parts.Replace(line, line with { Touches = ["tailpipe"] }) });

        result.Findings.ShouldNotContain(f => f.Parts.Any(p => p.Id == "axle-brake-line"));
        result.Exempt.ShouldContain(z => z.RadiusMm == null && z.Parts.SequenceEqual(new[] { "axle-brake-line", "tailpipe" }));
    }

    [Fact]
    public void Pairs_that_move_and_no_rule_covers_are_named()
    {
        Result.NotInspected.ShouldContain(i => i.What == "The gap between Rear axle tube and Tailpipe over the axle");
    }

    [Fact]
    public void Parts_of_one_body_that_overlap_as_measured_are_named_though_no_rule_covers_them()
    {
        // The axle's brake line lowered by 40 mm runs through the axle tube.
        InspectionResult result = OneLine.Inspect(OneLine.Vehicle().With(p =>
            p.Path.StartsWith("parts/axle-brake-line/path/3.z", StringComparison.Ordinal) ? p with { ValueMm = p.ValueMm - 40 } : p));

        result.NotInspected.ShouldContain(i => i.What.StartsWith("Rear axle tube and Brake line along the rear axle to the right wheel overlap by", StringComparison.Ordinal));
        Result.NotInspected.ShouldNotContain(i => i.What.Contains("overlap by", StringComparison.Ordinal));
    }

    private static void Matches(Finding finding, (double Value, double Left, double Right) expected, double tolerance)
    {
        Evidence evidence = finding.Evidence.ShouldNotBeNull();
        TestContext.Current.TestOutputHelper?.WriteLine($"{finding.Id}: engine {evidence.Value:F3} (never less than {evidence.Bound:F3}), brute force {expected.Value:F3} at {expected.Left:F2}, {expected.Right:F2}");
        evidence.Value.ShouldBe(expected.Value, tolerance);
        evidence.Bound.ShouldBeLessThanOrEqualTo(expected.Value);
        evidence.Pose.Coordinates[0].Value.ShouldBe(expected.Left, 3);
        evidence.Pose.Coordinates[1].Value.ShouldBe(expected.Right, 3);
    }

    private static void SameValues(InspectionResult other, bool swapped)
    {
        other.Findings.Select(f => f.Id).ShouldBe(Result.Findings.Select(f => f.Id), ignoreOrder: true);
        foreach (Finding finding in Result.Findings)
        {
            Evidence mine = finding.Evidence!, theirs = other.Findings.Single(f => f.Id == finding.Id).Evidence!;
            theirs.Value.ShouldBe(mine.Value, 1e-3);
            theirs.StandardUncertainty.ShouldBe(mine.StandardUncertainty, 1e-2);
            if (mine.Pose.Coordinates.IsEmpty) continue;
            theirs.Pose.Coordinates[swapped ? 1 : 0].Value.ShouldBe(mine.Pose.Coordinates[0].Value, 0.05);
        }
    }
}
