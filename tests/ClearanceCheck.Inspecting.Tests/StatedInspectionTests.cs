using System.Globalization;
using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Files;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Slack;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The fixture one-line, typed as it would have been measured in other states: points from the posed model, the same vehicle.</summary>
public sealed class StatedInspectionTests
{
    private const string Flexed = "  flexed: { on: level-floor, hub-to-fender: { rear-left: 590 mm, rear-right: 695 mm } }\n";
    private static readonly double[][] Poses = [[0, 0], [60, 60], [-90, -90], [55, -70], [-40, 65]];
    private static readonly string Text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span).Replace("measured-in: hanging", Flexed + "measured-in: hanging", StringComparison.Ordinal);
    private static readonly InspectionReading Hanging = Read(Text);
    private static readonly VehicleMotion Motion = Move(Hanging.Vehicle.ShouldNotBeNull());

    /// <summary>Layout points in one state, the points of parts in another.</summary>
    public static TheoryData<string, string> States { get; } = new()
    {
        { "ride", "ride" },
        { "hanging", "ride" },
        { "ride", "hanging" },
        { "hanging", "flexed" },
        { "flexed", "ride" },
        { "flexed", "flexed" },
    };

    [Theory]
    [MemberData(nameof(States))]
    public void A_vehicle_typed_in_other_states_has_the_same_gaps(string layout, string parts)
    {
        VehicleMotion other = Move(Read(Typed(layout, parts)).Vehicle.ShouldNotBeNull());

        other.Vehicle.StatedPoints.IsEmpty.ShouldBe(layout == parts);
        foreach (double[] pose in Poses)
        {
            foreach ((string first, string second) in Pairs())
                Gap(other, first, second, pose).ShouldBe(Gap(Motion, first, second, pose), 1e-9, $"{first} and {second}");
            Slack(other, pose).ShouldBe(Slack(Motion, pose), 1e-9);
            Reserves(other, pose).Zip(Reserves(Motion, pose)).ShouldAllBe(r => Math.Abs(r.First - r.Second) < 1e-9);
        }
    }

    [Fact]
    public void The_whole_inspection_says_the_same()
    {
        InspectionResult hanging = OneLine.Inspect(Hanging.Vehicle!), mixed = OneLine.Inspect(Read(Typed("hanging", "ride")).Vehicle.ShouldNotBeNull());

        mixed.Findings.Select(f => (f.Id, f.Verdict)).ShouldBe(hanging.Findings.Select(f => (f.Id, f.Verdict)));
        foreach ((Finding one, Finding other) in mixed.Findings.Zip(hanging.Findings))
        {
            one.Evidence!.Value.ShouldBe(other.Evidence!.Value, 0.02);

            // Readings of one state more: never surer than where all was measured in one state.
            one.Evidence.StandardUncertainty.ShouldBeGreaterThanOrEqualTo(other.Evidence.StandardUncertainty - 0.05);
        }
    }

    [Theory]
    [InlineData("hanging", "ride")]
    [InlineData("ride", "flexed")]
    public void Every_reading_that_moves_a_value_is_propagated(string layout, string parts)
    {
        Vehicle vehicle = Read(Typed(layout, parts)).Vehicle.ShouldNotBeNull();
        VehicleMotion motion = Move(vehicle);
        Part line = Find(motion, "axle-brake-line"), pipe = Find(motion, "tailpipe");
        MeasuredPoint onAxle = ((PartForm.Chain)line.Form).Path[3], onChassis = ((PartForm.Chain)pipe.Form).Path[3];
        double[] pose = [20, -30];

        PoseUncertainty propagated = new PosePropagation(motion, motion.Modules[0]).At([line, pipe], [.. pose], Distance).ShouldNotBeNull();

        // The same by brute force, which asks every number of the model and knows of no states.
        double square = 0;
        for (int i = 0; i < vehicle.Parameters.Count; i++)
        {
            double effect = (Changed(i, 1) - Changed(i, -1)) / 2;
            square += effect * effect;
        }

        propagated.StandardUncertainty.ShouldBe(Math.Sqrt(square), 1e-6);
        propagated.Shares.ShouldContain(s => s.Reading == $"states/{parts}/hub-to-fender/rear-left" || parts == "ride");
        propagated.Shares.ShouldContain(s => s.Reading == "states/ride/hub-to-fender/rear-left");

        double Distance(Snapshot at) => (at.Body(1).Apply(onAxle.At(at.Parameters.Span)) - onChassis.At(at.Parameters.Span)).Length;

        double Changed(int index, int sign)
        {
            double[] changed = vehicle.Parameters.Shifted(index, sign * vehicle.Parameters.Parameters[index].StandardUncertaintyMm);
            VehicleMotion moved = VehicleMotion.Build(vehicle, changed).Motion.ShouldNotBeNull();
            return Distance(new Snapshot(moved.Parameters, moved.Modules[0], moved.Modules[0].Motion.At((ReadOnlySpan<double>)pose)));
        }
    }

    [Fact]
    public void A_point_typed_again_far_from_where_the_model_has_it_is_said_in_the_report()
    {
        string again = Text.Replace("      hanging:                                # x", "      ride: { hub-left: [-612, 738, -330] }\n      hanging:                                # x", StringComparison.Ordinal);
        InspectionResult result = OneLine.Inspect(Read(again).Vehicle.ShouldNotBeNull());

        Assumption said = result.Assumptions.Where(a => a.Text.Contains("read both again", StringComparison.Ordinal)).ShouldHaveSingleItem();
        said.Path.ShouldBe("axles/rear/points/hub-left/in/ride");
        said.Text.ShouldStartWith("hub-left in the state ride was typed ");
        OneLine.Inspect(Hanging.Vehicle!).Assumptions.ShouldNotContain(a => a.Text.Contains("read both again", StringComparison.Ordinal));
    }

    // The fixture's text with every point on the axle where it is in another state.
    private static string Typed(string layout, string parts)
    {
        var text = new StringBuilder(Text);
        IEnumerable<(SourceSpan Span, string New)> changes =
            from point in PosedPoints.Of(Hanging.Vehicle!)
            where point.Body == "rear/axle" && Hanging.Places.ContainsKey(point.Path)
            select (Hanging.Places[point.Path], Point(Posed(point, point.Path.StartsWith("axles/", StringComparison.Ordinal) ? layout : parts)));
        foreach ((SourceSpan span, string fresh) in changes.OrderByDescending(c => c.Span.Start)) text.Remove(span.Start, span.End - span.Start).Insert(span.Start, fresh);
        return text.ToString()
            .Replace("      hanging:                                # x", $"      {layout}:                                # x", StringComparison.Ordinal)
            .Replace("measured-in: hanging", $"measured-in: {parts}", StringComparison.Ordinal);
    }

    private static Vector3d Posed(RidingPoint point, string state)
    {
        // Hub to fender at ride height is 640 and 641 mm.
        double[] travels = state switch { "hanging" => [640 - 742, 641 - 744], "flexed" => [640 - 590, 641 - 695], _ => [0, 0] };
        return Motion.Modules[0].Motion.At((ReadOnlySpan<double>)travels)[1].Apply(point.At.At(Motion.Parameters.Span));
    }

    private static string Point(Vector3d at) => string.Create(CultureInfo.InvariantCulture, $"[{at.X:F11}, {at.Y:F11}, {at.Z:F11}]");

    private static IEnumerable<(string First, string Second)> Pairs()
    {
        Part[] shaped = [.. Motion.Vehicle.Parts.Where(p => new GapQuantity().Refuses(p, Motion.Vehicle.Parts.First(o => o != p && o.Form is PartForm.Chain)) is null)];
        return from i in Enumerable.Range(0, shaped.Length) from j in Enumerable.Range(i + 1, shaped.Length - i - 1) select (shaped[i].Id, shaped[j].Id);
    }

    private static double Gap(VehicleMotion motion, string first, string second, double[] pose) =>
        new GapQuantity().At(new MeasureRequest(motion, Find(motion, first), Find(motion, second), double.PositiveInfinity), pose).ShouldNotBeNull();

    private static double Slack(VehicleMotion motion, double[] pose) =>
        new HoseSlackQuantity().At(new MeasureRequest(motion, Find(motion, "rear-brake-hose"), null, double.PositiveInfinity), pose).ShouldNotBeNull();

    private static IEnumerable<double> Reserves(VehicleMotion motion, double[] pose)
    {
        SolvedPose at = motion.Modules[0].Motion.At((ReadOnlySpan<double>)pose);
        return motion.Modules[0].Motion.Stops.Select(s => s.Reserve(at.Relative(s.FirstBody, s.SecondBody)));
    }

    private static Part Find(VehicleMotion motion, string id) => motion.Vehicle.Parts.Single(p => p.Id == id);

    private static VehicleMotion Move(Vehicle vehicle) => VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

    private static InspectionReading Read(string text)
    {
        InspectionReading reading = InspectionFileReader.Read(
            new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("one-line", file)));
        reading.Diagnostics.Count.ShouldBe(0, DiagnosticRenderer.Render(reading.Diagnostics));
        return reading;
    }
}
