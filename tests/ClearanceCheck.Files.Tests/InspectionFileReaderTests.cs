using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

public sealed class InspectionFileReaderTests
{
    private static readonly Vehicle Vehicle = FaultyFile.Read().Vehicle.ShouldNotBeNull();

    [Fact]
    public void The_fixture_is_read_without_a_word()
    {
        FaultyFile.Read().Diagnostics.Count.ShouldBe(0);
        FaultyFile.Read().FilesBeside.ShouldBe(["exhaust.csv"]);
    }

    [Fact]
    public void Points_and_lengths_arrive_in_millimetres()
    {
        ReadOnlySpan<double> nominal = Vehicle.Parameters.Nominal;
        var line = (PartForm.Chain)Part("chassis-brake-line").Form;

        line.Path[2].At(nominal).ShouldBe(new Vector3d(-420, 340, -96));
        line.OutsideDiameter.At(nominal).ShouldBe(4.7625);
        line.JoinedEnds.ShouldBe([0, 1, 3, 5]);
        Vehicle.Axles[0].Points["track-bar-axle"].At(nominal).ShouldBe(new Vector3d(-668, -445, -320));
        Vehicle.Axles[0].Left.MeasuredTravelMm(nominal).ShouldBe(640 - 742);
    }

    [Fact]
    public void A_table_gives_the_points_of_its_part_in_order()
    {
        var pipe = (PartForm.Chain)Part("tailpipe").Form;

        pipe.Path.Length.ShouldBe(6);
        pipe.Path[3].At(Vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-560, -532, -82));
        pipe.OutsideDiameter.At(Vehicle.Parameters.Nominal).ShouldBe(63.5);
    }

    [Fact]
    public void The_files_half_width_goes_to_points_and_tape_readings_only()
    {
        Parameter Named(string path) => Vehicle.Parameters.Parameters.Single(p => p.Path == path);

        Named("axles/rear/points/hub-left.x").HalfWidthMm.ShouldBe(3);
        Named("states/ride/hub-to-fender/rear-left").HalfWidthMm.ShouldBe(3);
        Named("parts/tailpipe/outside-diameter").HalfWidthMm.ShouldBe(Defaults.SizeMm);
        Named("parts/rear-shock-left/open").HalfWidthMm.ShouldBe(Defaults.StopLengthMm);
        Named("parts/rear-bump-stop-left/crush").ValueMm.ShouldBe(37.5);
        Named("parts/rear-bump-stop-left/crush").WithinIsAssumed.ShouldBeTrue();
    }

    [Fact]
    public void Without_a_half_width_each_target_gets_its_own_and_it_is_listed()
    {
        Vehicle vehicle = FaultyFile.Read(("within: 3 mm            # half-width of every point and tape reading below\n", "")).Vehicle.ShouldNotBeNull();

        vehicle.Parameters.Parameters.Single(p => p.Path == "axles/rear/points/upper-link-frame.z").HalfWidthMm.ShouldBe(Defaults.JointCentreMm);
        vehicle.Parameters.Parameters.Single(p => p.Path == "parts/axle-brake-line/path/2.y").HalfWidthMm.ShouldBe(Defaults.SurfaceMm);
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/points/upper-link-frame" && a.Text.StartsWith("Give or take not typed: 4 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Typed_digits_can_only_widen()
    {
        Vehicle vehicle = FaultyFile.Read(("hub-left: [-612, 738, -402]", "hub-left: [-612, 738, -15-13/16 in]"), ("within: 3 mm  ", "within: 0.5 mm")).Vehicle.ShouldNotBeNull();

        // A sixteenth is read to half of it, 0.79 mm: coarser than the half-width that was typed.
        vehicle.Parameters.Parameters.Single(p => p.Path == "axles/rear/points/hub-left.z").HalfWidthMm.ShouldBe(25.4 / 32, 1e-9);
    }

    [Fact]
    public void A_row_of_a_table_can_carry_its_own_half_width()
    {
        Vehicle vehicle = FaultyFile.Read("part,x,y,z,in,within\ntailpipe,0,0,0,hanging,7\ntailpipe,100,0,0,,\n").Vehicle.ShouldNotBeNull();

        vehicle.Parameters.Parameters.Single(p => p.Path == "parts/tailpipe/path/1.x").HalfWidthMm.ShouldBe(7);
        vehicle.Parameters.Parameters.Single(p => p.Path == "parts/tailpipe/path/2.x").HalfWidthMm.ShouldBe(3);
    }

    [Fact]
    public void Every_number_of_the_model_is_a_reading_that_was_typed_or_an_assumption_that_is_listed()
    {
        HashSet<int> typed = [.. Vehicle.Readings.SelectMany(r => r.IsPoint ? new[] { r.Parameter, r.Parameter + 1, r.Parameter + 2 } : [r.Parameter])];

        foreach ((Parameter parameter, int index) in Vehicle.Parameters.Parameters.Select((p, i) => (p, i)))
            if (!typed.Contains(index)) Vehicle.Assumptions.ShouldContain(a => a.Path == parameter.Path);
    }

    [Fact]
    public void An_exhaust_that_hangs_on_the_chassis_is_listed_as_taken_for_fixed()
    {
        Vehicle.Assumptions.ShouldContain(a => a.Path == "bodies/exhaust");
    }

    private static Part Part(string id) => Vehicle.Parts.Single(p => p.Id == id);

    [Fact]
    public void What_a_joint_can_take_arrives_with_the_part()
    {
        InspectionReading reading = FaultyFile.Read(("    upper: { body: chassis, at: [-700, 400, 60] }", "    joint-limit: 25 deg\n    upper: { body: chassis, at: [-700, 400, 60] }"));

        Part shock = reading.Vehicle.ShouldNotBeNull().Parts.Single(p => !p.Properties.IsEmpty);
        PartProperties.Find("joint-limit")!.Of(shock, reading.Vehicle.Parameters)!.Value.Value.ShouldBe(25, 1e-9);
    }
}
