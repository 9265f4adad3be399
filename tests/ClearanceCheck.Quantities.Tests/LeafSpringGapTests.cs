using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Files;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Gaps to a leaf spring that bends: against dense sampling of its travel, and where it is joined.</summary>
public sealed class LeafSpringGapTests(ITestOutputHelper output)
{
    private const string Inspection = """
        format: 1
        vehicle: { name: Tarn 7 pickup }
        scope: [ rear ]
        unit: mm
        within: 2 mm
        states: { ride: { on: level-floor, hub-to-fender: { rear-left: 640 mm, rear-right: 641 mm } } }
        measured-in: ride
        axles:
          rear:
            layout: leaf-springs
            travel: { droop: 20 mm, bump: 20 mm }
            clamp-length: 110 mm
            axle-wrap: none
            leaves: { width: 63 mm, thickness: 8 mm, stack: 42 mm }
            points:
              ride:
                hub-left: [-612, 780, -302]
                hub-right: [-612, -780, -302]
                spring-eye-left-frame: [6, 520, -212]
                spring-eye-right-frame: [6, -520, -212]
                spring-centre-pin-left: [-608, 520, -275]
                spring-centre-pin-right: [-608, -520, -275]
                shackle-left-frame: [-1252, 520, -150]
                shackle-right-frame: [-1252, -520, -150]
                shackle-left-spring: [-1290, 520, -262]
                shackle-right-spring: [-1290, -520, -262]
        parts:
          tube: { kind: axle-tube, body: rear/axle, outside-diameter: 3 in, path: [[-612, 660, -360], [-612, 300, -360]] }
          brake-line: { kind: brake-line, body: chassis, outside-diameter: 5 mm, path: [[-250, 520, -190], [-420, 530, -200]] }
          axle-line: { kind: brake-line, body: rear/axle, outside-diameter: 5 mm, path: [[-400, 560, -240], [-400, 600, -240]] }
          hanger: { kind: frame-bracket, body: chassis, outside-diameter: 40 mm, path: [[6, 560, -212], [6, 480, -212]] }

        """;

    private static readonly VehicleMotion Motion = Move();
    private static readonly Part Spring = Named("rear-left-leaf-spring");

    [Theory]
    [InlineData("brake-line")]
    [InlineData("axle-line")]
    public void No_sampled_pose_is_below_the_bound_and_the_least_value_is_found(string other)
    {
        var gap = new GapQuantity();
        var request = new MeasureRequest(Motion, Spring, Named(other), double.PositiveInfinity);
        Measurement measured = gap.Measure(request);
        double least = double.PositiveInfinity;
        for (int i = 0; i <= 8; i++)
            for (int k = 0; k <= 8; k++)
                least = Math.Min(least, gap.At(request, [-20 + (5 * i), -20 + (5 * k)])!.Value);

        output.WriteLine($"{measured.Value:F3} mm, bound {measured.Bound:F3}, sampled {least:F3}, {measured.Cells} cells, {measured.Grade}");
        measured.NotEvaluated.ShouldBeNull();
        measured.Grade.ShouldBe(Grade.Proven);
        measured.Bound.ShouldBeLessThanOrEqualTo(least);
        measured.Value.ShouldBeInRange(measured.Bound, least + 1e-6);
        (measured.Value - measured.Bound).ShouldBeLessThan(1.1);
        measured.Places[0].StandardUncertainty.ShouldBeInRange(0.5, 6);
    }

    [Fact]
    public void At_its_clamp_and_its_eye_contact_is_meant_and_what_lies_farther_off_is_judged()
    {
        var gap = new GapQuantity();
        ReadOnlySpan<double> values = Motion.Parameters.Span;

        MeantContact.Places(Spring, Named("tube"), values).Select(p => (p.Words, p.RadiusMm)).ShouldBe([("clamp", 85.0)]);
        MeantContact.Places(Spring, Named("hanger"), values).Select(p => p.Words).ShouldBe(["fixed eye"]);
        ImmutableArray<ShapeMember?> judged = MeantContact.Judged(Spring, Named("tube"), Motion, values);
        judged.Length.ShouldBe(13);
        judged[0].ShouldBeNull();
        Length(judged[1]).ShouldBeInRange(40, Length(PartShapes.Of(Spring, Motion, values)[1]) - 15);
        judged.Skip(2).Count(m => m is null).ShouldBe(0);
        foreach (string joined in (string[])["tube", "hanger"])
            gap.At(new MeasureRequest(Motion, Spring, Named(joined), double.PositiveInfinity), [0, 0])!.Value.ShouldBeGreaterThan(0, joined);
    }

    [Fact]
    public void The_bent_leaf_moves_less_than_its_axle_the_nearer_it_is_to_its_eye()
    {
        var request = new MeasureRequest(Motion, Spring, Named("brake-line"), double.PositiveInfinity);
        var gap = new GapQuantity();

        double moved = gap.At(request, [-20, -20])!.Value - gap.At(request, [20, 20])!.Value;

        // The line lies over the middle of the front half: the axle there comes up by 40 mm, the eye by nothing.
        moved.ShouldBeInRange(8, 34);
    }

    private static double Length(ShapeMember? member) => ((Plank)((RigidSolid)member!.Swept).Solid) is var plank ? (plank.To - plank.From).Length : 0;

    private static Part Named(string id) => Motion.Vehicle.Parts.Single(p => p.Id == id);

    private static VehicleMotion Move()
    {
        InspectionReading reading = InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(Inspection), _ => null));
        Vehicle vehicle = reading.Vehicle.ShouldNotBeNull();
        (VehicleMotion? motion, _, _) = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray());
        return motion.ShouldNotBeNull();
    }
}
