using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

/// <summary>What states, direct gaps, the heights before the lift and the rails' pitch become in the model.</summary>
public sealed class StatesTests
{
    private const string Hanging = "  hanging: { on: frame-lift, hub-to-fender: { rear-left: 742 mm, rear-right: 744 mm } }\n";
    private const string Flexed = Hanging
        + "  flexed: { on: level-floor, anti-roll-bar: disconnected, load: two sand bags, fuel: half, hub-to-fender: { rear-left: 560 mm, rear-right: 720 mm } }\n";

    [Fact]
    public void Without_another_state_no_point_is_placed()
    {
        Vehicle vehicle = FaultyFile.Read().Vehicle.ShouldNotBeNull();

        vehicle.StatedPoints.ShouldBeEmpty();
        vehicle.Axles[0].MeasuredIn.ShouldBe("hanging");
        vehicle.Axles[0].OtherStates.ShouldBeEmpty();
    }

    [Fact]
    public void The_words_of_a_state_arrive()
    {
        Vehicle vehicle = FaultyFile.Read((Hanging, Flexed)).Vehicle.ShouldNotBeNull();

        vehicle.States.ShouldBe([
            new MeasuringState("flexed", "level-floor", "disconnected", "two sand bags", "half"),
            new MeasuringState("hanging", "frame-lift", null, null, null),
            new MeasuringState("ride", "level-floor", null, null, null),
        ]);
    }

    [Fact]
    public void Only_points_on_moving_bodies_are_placed_and_the_nearest_word_for_the_state_counts()
    {
        Vehicle vehicle = FaultyFile.Read(
            (Hanging, Flexed),
            ("    name: Left rear shock\n", "    name: Left rear shock\n    in: flexed\n"),
            ("lower: { body: rear/axle, at: [-660, -470, -457] }", "lower: { body: rear/axle, at: [-660, -470, -457], in: ride }"),
            ("    name: Rear axle tube\n", "    name: Rear axle tube\n    in: hanging\n"),
            ("    path-from: exhaust.csv\n", "    path-from: exhaust.csv\n    in: ride\n")).Vehicle.ShouldNotBeNull();

        vehicle.StatedPoints.Select(s => (Path(vehicle, s), s.Body, s.State)).ShouldBe([
            ("parts/rear-shock-left/lower", "rear/axle", "flexed"),
            ("parts/rear-shock-right/lower", "rear/axle", "ride"),
        ]);
        AxleState flexed = vehicle.Axles[0].OtherStates["flexed"];
        vehicle.Axles[0].TravelsIn(flexed, vehicle.Parameters.Nominal).ShouldBe((80, -79));
        vehicle.Axles[0].TravelsIn(vehicle.Axles[0].OtherStates["ride"], vehicle.Parameters.Nominal).ShouldBe((0, 0));
    }

    [Fact]
    public void A_row_of_a_table_can_name_its_own_state()
    {
        Vehicle vehicle = FaultyFile.Read(
            "part,x,y,z,in,within\ntailpipe,0,0,0,,\ntailpipe,100,0,0,,\nrear-axle-tube,-612,660,-402,,\nrear-axle-tube,-612,-660,-300,ride,\n",
            ("    path:\n      - [-612, 660, -402]\n      - [-612, -660, -404]\n", "    path-from: exhaust.csv\n")).Vehicle.ShouldNotBeNull();

        vehicle.StatedPoints.Select(s => (Path(vehicle, s), s.State)).ShouldBe([("parts/rear-axle-tube/path/2", "ride")]);
    }

    [Fact]
    public void An_axle_can_be_measured_in_a_state_of_its_own()
    {
        Vehicle vehicle = FaultyFile.Read((Hanging, Flexed), ("      hanging:  ", "      flexed:  ")).Vehicle.ShouldNotBeNull();

        vehicle.Axles[0].MeasuredIn.ShouldBe("flexed");
        vehicle.Axles[0].Left.MeasuredTravelMm(vehicle.Parameters.Nominal).ShouldBe(80);
        // What names no state was measured in the file's, hanging: all of it on the axle is placed.
        vehicle.StatedPoints.ShouldContain(s => s.State == "hanging" && Path(vehicle, s) == "parts/rear-axle-tube/path/1");
    }

    [Fact]
    public void A_free_layout_names_its_state_in_measured_in()
    {
        Vehicle vehicle = FaultyFile.Read((FreeLayout.ThreeLink, FreeLayout.Text("measured-in: ride"))).Vehicle.ShouldNotBeNull();

        vehicle.Axles[0].MeasuredIn.ShouldBe("ride");
        vehicle.Axles[0].Left.HubToFenderMeasured.ShouldBeNull();
        vehicle.StatedPoints.ShouldAllBe(s => s.State == "hanging");
        vehicle.StatedPoints.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_point_of_the_layout_in_a_second_state_is_kept_for_comparison_alone()
    {
        Vehicle vehicle = FaultyFile.Read(("      hanging:                                # x", "      ride: { hub-left: [-604, 738, -290] }\n      hanging:                                # x")).Vehicle.ShouldNotBeNull();

        ComparedPoint compared = vehicle.Axles[0].ComparedPoints.ShouldHaveSingleItem();
        (compared.Name, compared.State).ShouldBe(("hub-left", "ride"));
        vehicle.Axles[0].Points["hub-left"].At(vehicle.Parameters.Nominal).X.ShouldBe(-612);
        ParameterUse.Of(vehicle.Axles[0]).ShouldNotContain(compared.Point.X.Index);
        vehicle.Readings.ShouldContain(r => r.Path == "axles/rear/points/hub-left/in/ride");
    }

    [Fact]
    public void Heights_before_the_lift_are_readings_of_their_own()
    {
        Vehicle vehicle = FaultyFile.Read(("parts:\n", "before-lift: { hub-to-fender: { rear-left: 561 mm, rear-right: 22 in } }\nparts:\n")).Vehicle.ShouldNotBeNull();

        vehicle.BeforeLift.Keys.ShouldBe(["rear-left", "rear-right"]);
        vehicle.BeforeLift["rear-right"].At(vehicle.Parameters.Nominal).ShouldBe(558.8, 1e-9);
        vehicle.Readings.ShouldContain(r => r.Path == "before-lift/hub-to-fender/rear-right" && r.Typed == "22 in");
    }

    [Fact]
    public void The_pitch_of_the_rails_arrives_with_a_finders_give_or_take()
    {
        Vehicle vehicle = FaultyFile.Read(("parts:\n", "rail-pitch: -0.4 deg\nparts:\n")).Vehicle.ShouldNotBeNull();

        vehicle.RailPitch.ShouldNotBeNull().Degrees.ShouldBe(-0.4, 1e-12);
        vehicle.RailPitch!.HalfWidthDegrees.ShouldBe(0.1);
        vehicle.Assumptions.ShouldContain(a => a.Path == "rail-pitch");
        FaultyFile.Read().Vehicle!.RailPitch.ShouldBeNull();
    }

    [Fact]
    public void Gaps_read_directly_arrive_with_the_give_or_take_of_their_tool()
    {
        Vehicle vehicle = FaultyFile.Read(("parts:\n", """
            gaps:
              over-axle: { between: [ tailpipe, rear/axle ], in: ride, is: 8-3/8 in, how: tape, closes: up }
              at-line: { between: [ chassis-brake-line, tailpipe ], is: 6 mm, how: drill }
              at-shock: { between: [ rear-shock-left, tailpipe ], is: 12 mm, how: clay, within: 3 mm }
              at-tube: { between: [ rear-axle-tube, tailpipe ], is: 90 mm, how: tape }
            parts:

            """)).Vehicle.ShouldNotBeNull();

        DirectGap[] gaps = [.. vehicle.DirectGaps];
        gaps.Select(g => g.Id).ShouldBe(["over-axle", "at-line", "at-shock", "at-tube"]);
        gaps[0].Between.ShouldBe(["tailpipe", "rear/axle"]);
        (gaps[0].State, gaps[0].How, gaps[0].Closes).ShouldBe(("ride", GapTool.Tape, "up"));
        (gaps[1].State, gaps[1].Closes).ShouldBe(("hanging", null));
        // An eighth is read to half of it, coarser than the usual give or take.
        gaps.Select(g => Half(vehicle, g)).ShouldBe([25.4 / 16, Defaults.FeelerMm, 3, Defaults.TapedGapMm]);
        gaps[0].Reading.At(vehicle.Parameters.Nominal).ShouldBe(212.725, 1e-9);
        vehicle.Axles[0].OtherStates.Keys.ShouldBe(["ride"]);
    }

    [Theory]
    [InlineData("30 mm", 30, "mm")]
    [InlineData("1-1/4 in", 31.75, "mm")]
    [InlineData("2 %", 2, "%")]
    [InlineData("20 deg", 20, "deg")]
    public void Accepted_findings_arrive_with_their_floor_in_its_unit(string typed, double floor, string unit)
    {
        string accepted = $"accepted:\n  behind-shield: {{ rule: line-near-exhaust, parts: [ tailpipe, axle-brake-line ], floor: {typed}, by: R. Amsel, until: 2031-10-01, reason: Checked hot }}\n";

        Vehicle vehicle = FaultyFile.Read(("parts:\n", accepted + "parts:\n")).Vehicle.ShouldNotBeNull();

        AcceptedFinding read = vehicle.Accepted.ShouldHaveSingleItem();
        (read.Floor, read.Unit, read.FloorTyped, read.Until).ShouldBe((floor, unit, typed, new DateOnly(2031, 10, 1)));
        read.IsOf("line-near-exhaust", ["axle-brake-line", "tailpipe"]).ShouldBeTrue();
        read.IsOf("line-near-exhaust", ["axle-brake-line"]).ShouldBeFalse();
    }

    [Fact]
    public void Hand_checks_arrive_with_the_give_or_take_of_a_tape_unless_typed()
    {
        Vehicle vehicle = FaultyFile.Read(("parts:\n", """
            checks:
              brake-line-near-exhaust--chassis-brake-line--tailpipe: { is: 12 mm, within: 2 mm, by: R. A., note: "pipe <b>cold</b>" }
              brake-line-near-exhaust--axle-brake-line--tailpipe: { is: 0 mm, by: R. A. }
              a-rule-with-a-name-that-is-nearly-sixty-letters-long-in-all--axle-brake-line--tailpipe: { is: 31-5/8 in, by: R. A. }
            parts:

            """)).Vehicle.ShouldNotBeNull();

        vehicle.HandChecks.ShouldBe([
            new HandCheck("brake-line-near-exhaust--chassis-brake-line--tailpipe", 12, 2, "R. A.", "pipe <b>cold</b>", "12 mm"),
            new HandCheck("brake-line-near-exhaust--axle-brake-line--tailpipe", 0, Defaults.TapedGapMm, "R. A.", null, "0 mm"),
            new HandCheck("a-rule-with-a-name-that-is-nearly-sixty-letters-long-in-all--axle-brake-line--tailpipe", 31.625 * 25.4, 25.4 / 16, "R. A.", null, "31-5/8 in"),
        ]);
        vehicle.Assumptions.Count(a => a.Path.StartsWith("checks/", StringComparison.Ordinal)).ShouldBe(2);
        FaultyFile.Read().Vehicle!.HandChecks.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("tailpipe, rear/axle", "tailpipe", "exhaust-pipe", "exhaust")]
    [InlineData("tailpipe, spare-tube", "spare-tube", "axle-tube", "rear/axle")]
    [InlineData("tailpipe, rear/axle", "spare-housing", "axle-housing", "rear/axle")]
    public void A_part_that_a_gap_was_read_to_needs_no_shape(string between, string id, string kind, string body)
    {
        string gap = $"gaps: {{ g: {{ between: [ {between} ], is: 205 mm, how: tape }} }}\nparts:\n";
        string pipe = "    kind: exhaust-pipe\n    name: Tailpipe over the axle\n    body: exhaust\n    outside-diameter: 2-1/2 in\n    path-from: exhaust.csv\n";
        Vehicle vehicle = (id == "tailpipe"
            ? FaultyFile.Read(("parts:\n", gap), (pipe, "    kind: exhaust-pipe\n    body: exhaust\n"))
            : FaultyFile.Read(("parts:\n", gap + $"  {id}: {{ kind: {kind}, body: {body} }}\n"))).Vehicle.ShouldNotBeNull();

        Part part = vehicle.Parts.Single(p => p.Id == id);
        part.Form.ShouldBe(new PartForm.Unshaped());
        part.Body.ShouldBe(body);
    }

    private static double Half(Vehicle vehicle, DirectGap gap) => vehicle.Parameters.Parameters[gap.Reading.Index].HalfWidthMm;

    private static string Path(Vehicle vehicle, StatedPoint stated) => vehicle.Parameters.Parameters[stated.Point.X.Index].Reading;
}
