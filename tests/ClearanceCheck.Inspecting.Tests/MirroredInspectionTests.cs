using System.Globalization;
using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Files;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>The fixture one-line with its right side made the image of its left: typed on both sides, and on one side with its mirror.</summary>
public sealed class MirroredInspectionTests
{
    private static readonly string Text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span)
        .Replace("rear-right: 744 mm", "rear-right: 742 mm", StringComparison.Ordinal).Replace("rear-right: 641 mm", "rear-right: 640 mm", StringComparison.Ordinal);

    private static readonly Vehicle Both = Read(
        ("hub-right: [-612, -738, -404]", "hub-right: [-612, -738, -402]"),
        ("lower-link-right-frame: [288, -430, -233]", "lower-link-right-frame: [288, -432, -232]"),
        ("lower-link-right-axle: [-590, -506, -454]", "lower-link-right-axle: [-590, -505, -452]"),
        ("at: [-660, -470, -457]", "at: [-660, -470, -455]"),
        ("at: [-606, -455, -347]", "at: [-606, -455, -345]"));

    private static readonly (string, string)[] OneSide =
    [
        ("    layout: three-link\n", "    layout: three-link\n    side: left\n    mirror-within: 0 mm\n"),
        ("        hub-left:", "        hub:"),
        ("        lower-link-left-", "        lower-link-"),
        ("        hub-right: [-612, -738, -404]\n", ""),
        ("        lower-link-right-frame: [288, -430, -233]\n        lower-link-right-axle: [-590, -506, -454]\n", ""),
        ("  rear-shock-left:\n    kind: shock\n", "  rear-shock:\n    kind: shock\n    side: left\n    mirror-within: 0 mm\n"),
        (Block("rear-shock-right", "rear-bump-stop-left"), ""),
        ("  rear-bump-stop-left:\n    kind: bump-stop\n", "  rear-bump-stop:\n    kind: bump-stop\n    side: left\n    mirror-within: 0 mm\n"),
        (Block("rear-bump-stop-right", "rear-axle-tube"), ""),
    ];

    private static readonly Vehicle Mirrored = Read(OneSide);

    [Fact]
    public void One_side_and_its_mirror_give_the_same_values_as_both_sides_typed()
    {
        InspectionResult both = OneLine.Inspect(Both), mirrored = OneLine.Inspect(Mirrored);

        mirrored.Findings.Select(f => f.Id).ShouldBe(both.Findings.Select(f => f.Id));
        foreach ((Finding one, Finding other) in mirrored.Findings.Zip(both.Findings)) one.Evidence!.Value.ShouldBe(other.Evidence!.Value, 1e-9);
    }

    [Fact]
    public void A_danger_that_is_met_only_with_a_mirrored_point_names_the_point_and_gives_conditions()
    {
        InspectionResult mirrored = OneLine.Inspect(WithLongHose(Mirrored, 60)), both = OneLine.Inspect(WithLongHose(Both, 60));
        Finding hose = mirrored.Find(OneLine.Hose, "rear-brake-hose");

        hose.Verdict.ShouldBe(Verdict.Conforms);
        string sentence = hose.Assumes.First(a => a.EndsWith(" was not measured: the other side's was mirrored.", StringComparison.Ordinal));
        sentence.ShouldContain("right");
        mirrored.Decision.Reasons.ShouldContain(r => r.StartsWith($"{hose.Title} (", StringComparison.Ordinal) && r.Contains("met only with something that nobody measured. ", StringComparison.Ordinal));
        mirrored.Decision.DoThis.ShouldContain(d => d.FindingId == hose.Id && d.Text.EndsWith(" Measure it and say how well.", StringComparison.Ordinal));
        both.Find(OneLine.Hose, "rear-brake-hose").Assumes.ShouldNotContain(a => a.Contains("mirrored", StringComparison.Ordinal));
    }

    private static Vehicle WithLongHose(Vehicle vehicle, double mirrorWithin) => vehicle.With(p => p.Path.EndsWith("/free-length", StringComparison.Ordinal) ? p with { ValueMm = 420 }
        : p.ValueMm == 0 && p.HalfWidthMm == 0 ? p with { HalfWidthMm = mirrorWithin } : p);

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void Every_reading_that_moves_a_value_is_propagated(double mirrorWithin)
    {
        Vehicle vehicle = Mirrored.With(p => p.ValueMm == 0 && p.HalfWidthMm == 0 ? p with { HalfWidthMm = mirrorWithin } : p);
        VehicleMotion motion = Move(vehicle);
        Part line = vehicle.Parts.Single(p => p.Id == "axle-brake-line"), right = vehicle.Parts.Single(p => p.Id == "rear-shock-right");
        MeasuredPoint onAxle = ((PartForm.Chain)line.Form).Path[3], onFrame = ((PartForm.Shock)right.Form).Upper.At;
        double[] pose = [20, -30];

        PoseUncertainty propagated = new PosePropagation(motion, motion.Modules[0]).At([line, right], [.. pose], Distance).ShouldNotBeNull();

        double square = 0;
        for (int i = 0; i < vehicle.Parameters.Count; i++)
        {
            double u = vehicle.Parameters.Parameters[i].StandardUncertaintyMm, effect = (Changed(i, u) - Changed(i, -u)) / 2;
            square += effect * effect;
        }

        propagated.StandardUncertainty.ShouldBe(Math.Sqrt(square), 1e-6);
        propagated.Shares.ShouldContain(s => s.Reading == "parts/rear-shock-left/upper");
        propagated.Shares.Any(s => s.Reading == "parts/rear-shock-right/upper").ShouldBe(mirrorWithin > 0);
        propagated.Shares.Any(s => s.Reading == "axles/rear/points/hub-right").ShouldBe(mirrorWithin > 0);

        double Distance(Snapshot at) => (at.Body(1).Apply(onAxle.At(at.Parameters.Span)) - onFrame.At(at.Parameters.Span)).Length;

        double Changed(int index, double byMm)
        {
            VehicleMotion moved = VehicleMotion.Build(vehicle, vehicle.Parameters.Shifted(index, byMm)).Motion.ShouldNotBeNull();
            return Distance(new Snapshot(moved.Parameters, moved.Modules[0], moved.Modules[0].Motion.At((ReadOnlySpan<double>)pose)));
        }
    }

    [Fact]
    public void A_point_seen_at_ride_height_is_placed_first_and_mirrored_then()
    {
        VehicleMotion motion = Move(Both);
        Vector3d seen = motion.Modules[0].Motion.At([0, 0])[1].Apply(new Vector3d(-660, 470, -455));
        string end = string.Create(CultureInfo.InvariantCulture, $"lower: {{ body: rear/axle, at: [{seen.X:F11}, {seen.Y:F11}, {seen.Z:F11}], in: ride }}");

        VehicleMotion placed = Move(Read([.. OneSide, ("lower: { body: rear/axle, at: [-660, 470, -455] }", end)]));

        Lower(placed, "rear-shock-left").At(placed.Parameters.Span).X.ShouldBe(-660, 1e-9);
        (Lower(placed, "rear-shock-right").At(placed.Parameters.Span) - new Vector3d(-660, -470, -455)).Length.ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void An_axle_that_its_track_bar_moves_aside_is_said_where_it_is_mirrored()
    {
        OneLine.Inspect(Mirrored).Assumptions.Where(a => a.Text.StartsWith("From the state hanging to ride height the axle rear moves ", StringComparison.Ordinal))
            .Select(a => a.Path).ShouldBe(["axles/rear/mirror", "parts/rear-shock-right", "parts/rear-bump-stop-right"]);
        OneLine.Inspect(Both).Assumptions.ShouldNotContain(a => a.Text.Contains("mirror", StringComparison.Ordinal));
    }

    private static MeasuredPoint Lower(VehicleMotion motion, string id) => motion.Vehicle.Parts.Single(p => p.Id == id).Form.Ends[1].At;

    private static VehicleMotion Move(Vehicle vehicle) => VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

    private static string Block(string from, string to)
    {
        int start = Text.IndexOf($"  {from}:\n", StringComparison.Ordinal);
        return Text[start..Text.IndexOf($"  {to}:\n", StringComparison.Ordinal)];
    }

    private static Vehicle Read(params (string Old, string New)[] changes)
    {
        string text = Text;
        foreach ((string old, string fresh) in changes)
        {
            text.ShouldContain(old);
            text = text.Replace(old, fresh, StringComparison.Ordinal);
        }

        InspectionReading reading = InspectionFileReader.Read(
            new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("one-line", file)));
        reading.Diagnostics.Count.ShouldBe(0, DiagnosticRenderer.Render(reading.Diagnostics));
        return reading.Vehicle.ShouldNotBeNull();
    }
}
