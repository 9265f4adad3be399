using System.Globalization;
using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The fixture one-line with gaps read directly.</summary>
public sealed class DirectGapTests
{
    private const string Line = "axle-brake-line", Pipe = "tailpipe";
    private static readonly string Text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span);

    // The line and the pipe as the points have them hanging.
    private static readonly double Hanging = GapHanging(Vehicle(""));

    [Fact]
    public void A_reading_that_is_the_computed_gap_keeps_the_value_and_makes_it_surer()
    {
        Evidence plain = Find(Vehicle("")).Evidence!, anchored = Find(Vehicle(Gap(Hanging))).Evidence!;

        anchored.Value.ShouldBe(plain.Value, 1e-6);
        anchored.Bound.ShouldBe(plain.Bound, 1e-6);
        anchored.StandardUncertainty.ShouldBeLessThan(plain.StandardUncertainty);
        anchored.Plots[0].Points.Where(p => p.At == anchored.Plots[0].At).ShouldAllBe(p => Math.Abs(p.Value - anchored.Value) < 1e-6);
    }

    [Fact]
    public void A_reading_that_is_a_little_smaller_says_how_much_closer_it_gets()
    {
        Finding plain = Find(Vehicle("")), anchored = Find(Vehicle(Gap(Hanging - 4)));

        anchored.Basis.ShouldBe(FindingBasis.Reading);
        anchored.Evidence!.Value.ShouldBe(plain.Evidence!.Value - 4, 1e-6);
        double closer = Hanging - plain.Evidence.Value;
        DirectCard card = anchored.Direct.ShouldHaveSingleItem();
        card.Words.ShouldBe($"Measured {Mm(Hanging - 4)} hanging, and {Mm(closer)} closer at its worst; the points make it {Mm(Hanging)} there.");
        (card.Counts, card.Disagrees).ShouldBe((true, false));
        anchored.Evidence.Plots[0].Points.ShouldContain(p => Math.Abs(p.Value - anchored.Evidence.Value) < 1e-6);
    }

    [Fact]
    public void A_reading_that_contradicts_the_points_is_said_out_loud_and_clears_nothing()
    {
        Vehicle vehicle = Vehicle(Gap(Hanging + 60));
        InspectionResult result = OneLine.Inspect(vehicle);
        Finding plain = Find(Vehicle("")), found = result.Find(OneLine.Exhaust, Line);

        string said = $"read {Mm(Hanging + 60)} hanging where the points make it {Mm(Hanging)} (60 mm apart): read both again";
        found.Direct.ShouldHaveSingleItem().Words.ShouldBe("R" + said[1..] + "; until then the smaller value counts.");
        found.Evidence!.Value.ShouldBe(plain.Evidence!.Value, 1e-6);
        found.Evidence.StandardUncertainty.ShouldBeGreaterThanOrEqualTo(plain.Evidence.StandardUncertainty);
        found.Verdict.ShouldNotBe(Verdict.Conforms);
        result.NotInspected.ShouldContain(new NotInspectedItem("Which is right of the gap between Brake line along the rear axle to the right wheel and Tailpipe over the axle", said));
        Find(Vehicle(Gap(Hanging - 60))).Evidence!.Value.ShouldBe(plain.Evidence.Value - 60, 1e-6);
    }

    [Fact]
    public void The_give_or_take_of_an_anchored_gap_is_that_of_the_change_by_brute_force()
    {
        // The travel typed so that its ends hold the worst pose and no stop does: the ends are numbers of the model that shift the pose, here hardly at all.
        Vehicle vehicle = Read(Text.Replace("travel: { droop: 180 mm, bump: 160 mm }", "travel: { droop: 60.00 mm, bump: 50.00 mm, within: 0.005 mm }", StringComparison.Ordinal)
            .Replace("parts:\n", Gap(Hanging) + "parts:\n", StringComparison.Ordinal));
        VehicleMotion motion = Move(vehicle, vehicle.Parameters.Nominal.ToArray());
        Measurement measured = new GapQuantity().Measure(Ask(motion) with { ToleranceMm = 0.1 });
        WorstPlace place = measured.Places[0];

        measured.Basis.ShouldBe(MeasurementBasis.Reading);
        place.ActiveStops.ShouldBe(["end of the travel looked at, rear.left bump", "end of the travel looked at, rear.right bump"]);
        double square = 0;
        for (int i = 0; i < vehicle.Parameters.Count; i++)
        {
            double effect = (Change(i, 1) - Change(i, -1)) / 2;
            square += effect * effect;
        }

        place.StandardUncertainty.ShouldBe(Math.Sqrt(square), 1e-6 * Math.Sqrt(square));

        double Change(int index, int sign)
        {
            VehicleMotion changed = Move(vehicle, vehicle.Parameters.Shifted(index, sign * vehicle.Parameters.Parameters[index].StandardUncertaintyMm));
            double[] pose = [changed.Modules[0].Motion.Box.Coordinates[0].High, changed.Modules[0].Motion.Box.Coordinates[1].High];
            double[] stood = StatePose.Of(changed.Modules[0], "hanging", changed.Parameters.Span);
            return At(changed, pose) - At(changed, stood) + vehicle.DirectGaps[0].Reading.At(changed.Parameters.Span);
        }
    }

    [Fact]
    public void Readings_that_no_judged_pair_has_are_listed()
    {
        InspectionResult result = OneLine.Inspect(Vehicle("gaps: { hose: { between: [ rear-brake-hose, tailpipe ], is: 30 mm, how: tape } }\n"));

        result.NotInspected.ShouldContain(new NotInspectedItem("The gap read between Brake hose to the rear axle and Tailpipe over the axle (`hose`)", "no pair that a rule asks for was judged by it"));
    }

    [Theory]
    [InlineData(350, Verdict.Conforms, null)]
    [InlineData(205, Verdict.NotEvaluated, "measure points of tailpipe near Brake line along the rear axle to the right wheel: 205 mm hanging less up to ")]
    [InlineData(30, Verdict.Fails, null)]
    [InlineData(50.5, Verdict.NotEvaluated, "measure points of tailpipe near Brake line along the rear axle to the right wheel: 50.5 mm hanging less up to ")]
    public void A_pipe_without_shape_is_judged_by_reading_and_travel(double read, Verdict expected, string? missing)
    {
        Finding found = Find(Shapeless(read));

        // Wheels go from 170 mm of droop to 151 mm of bump, and stood at 102 mm of droop: the line moves less than 260 mm from there.
        found.Verdict.ShouldBe(expected);
        found.Basis.ShouldBe(FindingBasis.ReadingAndTravel);
        if (missing is null) found.Missing.ShouldBeNull();
        else found.Missing.ShouldNotBeNull().ShouldStartWith(missing);
        if (missing is not null) found.Missing!.ShouldEndWith(" and the rule asks for 50 mm");
        if (expected != Verdict.Fails) return;
        found.Evidence!.Value.ShouldBe(read);
        found.Evidence.Pose.Coordinates[0].Value.ShouldBe(640 - 742, 1e-9);
    }

    [Fact]
    public void What_travel_alone_says_is_below_what_points_find()
    {
        Evidence points = Find(Vehicle("")).Evidence!;

        double travel = Find(Shapeless(Hanging)).Direct.ShouldHaveSingleItem().TravelMm.ShouldNotBeNull();

        (Hanging - travel).ShouldBeLessThan(points.Bound);
    }

    private static Vehicle Shapeless(double read) => Read(Text
        .Replace("    outside-diameter: 2-1/2 in\n    path-from: exhaust.csv\n", "", StringComparison.Ordinal)
        .Replace("    name: Tailpipe over the axle\n", "", StringComparison.Ordinal)
        .Replace("parts:\n", Gap(read) + "parts:\n", StringComparison.Ordinal));

    private static string Gap(double mm) => string.Create(CultureInfo.InvariantCulture, $"gaps: {{ g: {{ between: [ {Line}, {Pipe} ], is: {mm:F10} mm, how: tape, closes: up }} }}\n");

    private static string Mm(double mm) => Units.NumberFormat.UpTo(mm, 1) + " mm";

    private static Finding Find(Vehicle vehicle) => OneLine.Inspect(vehicle).Find(OneLine.Exhaust, Line);

    private static Vehicle Vehicle(string gaps) => Read(Text.Replace("parts:\n", gaps + "parts:\n", StringComparison.Ordinal));

    private static double GapHanging(Vehicle vehicle)
    {
        VehicleMotion motion = Move(vehicle, vehicle.Parameters.Nominal.ToArray());
        return At(motion, StatePose.Of(motion.Modules[0], "hanging", motion.Parameters.Span));
    }

    private static double At(VehicleMotion motion, double[] pose) => new GapQuantity().At(Ask(motion), pose).ShouldNotBeNull();

    private static MeasureRequest Ask(VehicleMotion motion) =>
        new(motion, motion.Vehicle.Parts.Single(p => p.Id == Line), motion.Vehicle.Parts.Single(p => p.Id == Pipe), double.PositiveInfinity);

    private static VehicleMotion Move(Vehicle vehicle, double[] parameters) => VehicleMotion.Build(vehicle, parameters).Motion.ShouldNotBeNull();

    private static Vehicle Read(string text)
    {
        InspectionReading reading = InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("one-line", file)));
        return reading.Vehicle.ShouldNotBeNull(DiagnosticRenderer.Render(reading.Diagnostics));
    }
}
