using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Tests.Layouts;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>How far rods lean from square to the studs at their ends.</summary>
public sealed class StudAngleTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void A_rod_leans_along_its_stud_by_what_its_far_end_rises_or_falls(int up)
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        Part rod = hand.Add("rod", "link", Vehicle.Chassis, Rod(hand, 1) with { FirstAxis = hand.Point(new(1000, 0, up * 100), 1) });

        Measurement measured = Measure(hand.Motion(), rod);

        measured.Value.ShouldBe(Math.Atan2(60, 1000) / Degree, 0.02);
        measured.Bound.ShouldBeInRange(measured.Value, measured.Value + 0.11);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
        // Along the rod the stud's two points count by 1/100 each; heights of both ends, and the travel's end, by 1/1000.
        double expected = Math.Sqrt((2 * Math.Pow(ByHand.U(1) / 100, 2)) + (2 * Math.Pow(ByHand.U(1) / 1000, 2)) + Math.Pow(ByHand.U(4) / 1000, 2));
        measured.Places[0].StandardUncertainty.ShouldBe(expected / Degree, 0.03 * expected / Degree);
    }

    [Fact]
    public void A_turn_about_the_stud_bends_nothing()
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        Part rod = hand.Add("rod", "link", Vehicle.Chassis, Rod(hand, 0) with { FirstAxis = hand.Point(new(1000, 100, 0), 0) });

        Measurement measured = Measure(hand.Motion(), rod);

        // The far rods pull the axle aside by 0.15 mm in 1000 mm.
        measured.Value.ShouldBeLessThan(0.02);
        measured.Bound.ShouldBeLessThan(0.13);
    }

    [Fact]
    public void Every_stud_counts_and_a_rod_without_any_is_asked_for_them()
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        PartForm.Link form = Rod(hand, 0);
        Part both = hand.Add("both", "link", Vehicle.Chassis, form with { FirstAxis = hand.Point(new(1000, 100, 0), 0), SecondAxis = hand.Point(new(0, 0, 100), 0) });
        Part bare = hand.Add("bare", "link", Vehicle.Chassis, form);
        VehicleMotion motion = hand.Motion();

        Measure(motion, both).Value.ShouldBe(Math.Atan2(60, 1000) / Degree, 0.3);
        new JointAngleQuantity().Measure(Request(motion, bare)).NotEvaluated
            .ShouldBe("which way the studs of bare point is not in the file: measure a point straight ahead of each stud or bolt and type it as `axis-first` and `axis-second`");
    }

    [Fact]
    public void A_steered_tie_rod_leans_nowhere_more_than_its_bound_and_somewhere_as_much()
    {
        Vehicle bare = Samples.Of("three-link", "cross-over", limit: 60).Build();
        Axle front = bare.Axles[0] with { Steering = bare.Axles[0].Steering! with { Left = 0.05, Right = 0.05 } };
        // A stud that stands far from square to the rod, so that steering changes the lean too: the line to the kingpin's upper end.
        var rod = new Part
        {
            Id = "tie-rod",
            Name = "Tie rod",
            Kind = PartKinds.Find("steering-rod")!,
            Body = "front/knuckle-left",
            Touches = [],
            Form = new PartForm.Link(new Place("front/knuckle-left", front.Points["tie-rod-left"]), new Place("front/knuckle-right", front.Points["tie-rod-right"]), front.BumpLimit)
            {
                FirstAxis = front.Points["kingpin-left-upper"],
            },
        };
        Vehicle vehicle = bare with { Axles = [front], Parts = [rod] };
        VehicleMotion motion = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

        Measurement measured = Measure(motion, rod);

        AxleModule module = motion.Modules[0];
        var random = new Random(11);
        double most = 0;
        for (int i = 0; i < 3000; i++)
        {
            double[] pose = [.. module.Motion.Box.Coordinates.Select(c => Math.Clamp(c.Low + ((c.High - c.Low) * ((1.2 * random.NextDouble()) - 0.1)), c.Low, c.High))];
            if (module.Motion.At(pose.AsSpan()) is { IsSolved: true } at) most = Math.Max(most, Lean(module, at, motion.Parameters.Span));
        }

        most.ShouldBeGreaterThan(5);
        measured.Bound.ShouldBeGreaterThanOrEqualTo(most - 1e-6);
        measured.Value.ShouldBe(most, 0.3);
        (measured.Bound - measured.Value).ShouldBeLessThan(0.11);
    }

    private static double Lean(AxleModule module, SolvedPose at, ReadOnlySpan<double> parameters)
    {
        RigidMotion left = at[module.Bodies.IndexOf("front/knuckle-left")], right = at[module.Bodies.IndexOf("front/knuckle-right")];
        Vector3d from = left.Apply(module.Axle.Points["tie-rod-left"].At(parameters)), to = right.Apply(module.Axle.Points["tie-rod-right"].At(parameters));
        Vector3d stud = left.Apply(module.Axle.Points["kingpin-left-upper"].At(parameters)) - from;
        return Math.Abs(90 - (Math.Acos(Vector3d.Dot(stud, to - from) / (stud.Length * (to - from).Length)) / Degree));
    }

    private static PartForm.Link Rod(ByHand hand, double within) =>
        new(new Place(Vehicle.Chassis, hand.Point(new(1000, 0, 0), within)), new Place("rear/axle", hand.Point(new(0, 0, 0), within)), hand.Length(40, 0));

    private static MeasureRequest Request(VehicleMotion motion, Part part) => new(motion, part, null, double.PositiveInfinity);

    private static Measurement Measure(VehicleMotion motion, Part part) =>
        new JointAngleQuantity().Measure(Request(motion, part)).With(m => m.NotEvaluated.ShouldBeNull());
}
