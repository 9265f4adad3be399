using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Tests.Layouts;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Alignment;
using ClearanceCheck.Quantities.Gearing;
using ClearanceCheck.Quantities.Steering;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Toe as it was read, wheels that stand ahead of each other, and tires that roll farther.</summary>
public sealed class AlignmentQuantityTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(1500, 1504, 1)]
    [InlineData(1504, 1500, -1)]
    public void Toe_is_what_the_readings_before_and_behind_the_axle_tell(double front, double rear, int sign)
    {
        (VehicleMotion motion, Part tire) = Toed(front, rear);

        Measurement measured = Measure(new ToeQuantity(), motion, tire);

        // 4 mm over 760 mm are 2 asin(4 / 1520) rad; each of both readings, within 1.5 mm, counts by 1/760.
        measured.Value.ShouldBe(sign * 2 * Math.Asin(4 / 1520.0) / Degree, 1e-9);
        measured.Bound.ShouldBe(measured.Value);
        measured.OtherSide.ShouldNotBeNull().Bound.ShouldBe(measured.Value);
        measured.Places[0].StandardUncertainty.ShouldBe(Math.Sqrt(2) * ByHand.U(1.5) / 760 / Degree, 1e-4);
        measured.Places[0].Pose.ShouldAllBe(c => c == 0);
    }

    [Fact]
    public void The_wheels_stand_as_they_were_read_and_change_from_there()
    {
        (VehicleMotion motion, Part tire) = Toed(1500, 1520);
        (VehicleMotion square, Part other) = Toed(1500, 1500);
        double read = 2 * Math.Asin(20 / 1520.0) / Degree;
        double[] up = [60, 60, 0];

        // At ride height both wheels share it; in another pose the toe is what was read and its change.
        Toe(motion, [0, 0, 0]).ShouldBe(read, 1e-9);
        new ToeQuantity().At(Request(motion, tire), up)!.Value.ShouldBe(Toe(motion, up), 1e-9);
        double changed = new ToeChangeQuantity().At(Request(motion, tire), up)!.Value;
        changed.ShouldBe(Math.Abs(Toe(motion, up) - read), 1e-9);
        // A wheel that toes in already is carried along by its turns: near to, and not the same as, one that stands straight.
        double straight = new ToeChangeQuantity().At(Request(square, other), up)!.Value;
        Math.Abs(changed - straight).ShouldBeGreaterThan(1e-6);
        changed.ShouldBe(straight, 0.1 * straight);
    }

    [Fact]
    public void Toe_that_was_read_does_not_turn_wheels_that_were_measured_in_another_state()
    {
        (VehicleMotion motion, _) = Toed(1500, 1520);
        Axle axle = motion.Vehicle.Axles[0];
        Axle hanging = axle with { Left = axle.Left with { HubToFenderMeasured = axle.DroopLimit } };

        WheelAttitude.MeasuredAxis(axle, true, motion.Parameters.Span).X.ShouldBeGreaterThan(0.01);
        WheelAttitude.MeasuredAxis(hanging, true, motion.Parameters.Span).X.ShouldBe(0);
    }

    [Fact]
    public void Without_a_reading_toe_is_asked_for()
    {
        (VehicleMotion motion, Part tire) = Tired(Samples.Of("double-wishbones", "rack", limit: 90).Build());

        new ToeQuantity().Measure(Request(motion, tire)).NotEvaluated
            .ShouldBe("the toe of the front wheels is not in the file: measure from wheel to wheel in front of the axle and behind it and type both under `toe`");
    }

    [Theory]
    [InlineData(9)]
    [InlineData(-9)]
    public void Wheels_are_as_far_ahead_of_each_other_as_their_hubs(double ahead)
    {
        (VehicleMotion motion, Part tire) = Tired(Samples.Of("three-link", limit: 60).At("hub-left", ahead, 795, 0).Build());

        Measurement measured = Measure(new WheelbaseDifferenceQuantity(), motion, tire);

        measured.Value.ShouldBe(9, 1e-6);
        measured.Places[0].StandardUncertainty.ShouldBe(ByHand.U(4) * Math.Sqrt(2), 0.05);
    }

    [Fact]
    public void A_larger_tire_is_geared_longer_by_how_much_farther_it_rolls()
    {
        Vehicle bare = Samples.Of("three-link", limit: 60).Build();
        (Vehicle vehicle, MeasuredLength[] lengths) = With(bare, (2622, 3), (2390, 5));
        (VehicleMotion motion, Part tire) = Tired(vehicle with
        {
            RollingChanges = ImmutableSortedDictionary<string, RollingChange>.Empty.Add("front", new RollingChange(lengths[0], lengths[1])),
        });

        Measurement measured = Measure(new GearingQuantity(), motion, tire);

        measured.Value.ShouldBe(100 * ((2622 / 2390.0) - 1), 1e-9);
        measured.OtherSide.ShouldNotBeNull().Value.ShouldBe(measured.Value);
        measured.Places[0].StandardUncertainty.ShouldBe(100 / 2390.0 * Math.Sqrt(Math.Pow(ByHand.U(3), 2) + Math.Pow(ByHand.U(5) * 2622 / 2390, 2)), 1e-4);
        new GearingQuantity().Measure(Request(Tired(bare).Motion, Tired(bare).Tire)).NotEvaluated
            .ShouldBe("the tire before the lift is not in the file: type its size as `tire`, or its `tire-circumference`, under `before-lift`");
    }

    private static double Toe(VehicleMotion motion, double[] pose)
    {
        AxleModule module = motion.Modules[0];
        SolvedPose at = module.Motion.At(pose);
        return (WheelAttitude.Of(module, true, at, 0, motion.Parameters.Span).ToeRad + WheelAttitude.Of(module, false, at, 0, motion.Parameters.Span).ToeRad) / Degree;
    }

    private static (VehicleMotion Motion, Part Tire) Toed(double front, double rear)
    {
        (Vehicle vehicle, MeasuredLength[] lengths) = With(Samples.Of("double-wishbones", "rack", limit: 90).Build(), (front, 1.5), (rear, 1.5), (760, 3));
        return Tired(vehicle with { Axles = [vehicle.Axles[0] with { Toe = new ToeReading(lengths[0], lengths[1], lengths[2]) }] });
    }

    private static (Vehicle Vehicle, MeasuredLength[] Lengths) With(Vehicle vehicle, params (double Mm, double Within)[] lengths)
    {
        int first = vehicle.Parameters.Parameters.Length;
        var all = new ParameterVector([.. vehicle.Parameters.Parameters, .. lengths.Select((l, i) => new Parameter($"reading-{i}", l.Mm, l.Within, false))]);
        return (vehicle with { Parameters = all }, [.. lengths.Select((_, i) => new MeasuredLength(first + i))]);
    }

    private static (VehicleMotion Motion, Part Tire) Tired(Vehicle bare)
    {
        Axle axle = bare.Axles[0];
        var tire = new Part
        {
            Id = "left-tire",
            Name = "Left tire",
            Kind = PartKinds.Find("tire")!,
            Body = axle.Left.Body,
            Touches = [],
            Form = new PartForm.Tire(new WheelSeat(axle.Left.Hub, null, true), axle.BumpLimit, axle.BumpLimit, axle.BumpLimit, 200),
        };
        Vehicle vehicle = bare with { Parts = [tire] };
        return (VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull(), tire);
    }

    private static MeasureRequest Request(VehicleMotion motion, Part part) => new(motion, part, null, double.PositiveInfinity);

    private static Measurement Measure(Quantity quantity, VehicleMotion motion, Part part) =>
        quantity.Measure(Request(motion, part)).With(m => m.NotEvaluated.ShouldBeNull());
}
