using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Travels;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>What is left of the travel that a wheel had before the lift: it had 90 mm down and 60 mm up.</summary>
public sealed class TravelQuantityTests
{
    [Fact]
    public void A_wheel_that_ends_at_no_stop_has_the_travel_that_was_looked_at()
    {
        (VehicleMotion motion, Part tire) = Moved(new ByHand { Limit = 54, RodWithin = 0 }, null);

        Measurement measured = Measure(motion, tire);

        // 54 of 90 mm down, 54 of 60 mm up; the heights within 2 mm. How far the travel goes on beyond its typed end is not known: that is said, not a give or take.
        measured.Value.ShouldBe(60, 1e-3);
        measured.Bound.ShouldBeInRange(59.9, 60.001);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
        measured.Places[0].Pose.ShouldBe([-54, -54]);
        double share = 100 / 90.0;
        measured.Places[0].StandardUncertainty.ShouldBe(share * Math.Sqrt(2) * 0.6 * ByHand.U(2), 0.02);
    }

    [Theory]
    [InlineData(330, 220, true)]
    [InlineData(380, 270, false)]
    public void Stops_take_what_they_take_of_the_way_down_or_up(double open, double closed, bool isDroop)
    {
        (VehicleMotion motion, Part tire) = Moved(new ByHand { Limit = 120, RodWithin = 0 }, (open, closed));

        Measurement measured = Measure(motion, tire);

        // Shocks upright over both sides of the axle, 300 mm long at ride height, with what its bushings give at each end.
        double left = isDroop ? (open - 300 + (2 * Defaults.ShockBushingMm)) / 90 : (300 - closed + (2 * Defaults.ShockBushingMm)) / 60;
        measured.Value.ShouldBe(100 * left, 100 * 2.1 * Defaults.ShockBushingMm / 60);
        measured.Bound.ShouldBeInRange(measured.Value - 2, measured.Value);
        measured.Places[0].EndsAtNoStop.ShouldBeFalse();
        measured.Places[0].ActiveStops.ShouldAllBe(s => s.StartsWith("shock-"));
    }

    [Fact]
    public void In_one_pose_the_way_that_the_wheel_has_gone_counts()
    {
        (VehicleMotion motion, Part tire) = Moved(new ByHand { Limit = 120, RodWithin = 0 }, null);

        new TravelQuantity().At(Request(motion, tire), [45, 0]).ShouldNotBeNull().ShouldBe(75, 1e-6);
        new TravelQuantity().At(Request(motion, tire), [-45, 0]).ShouldNotBeNull().ShouldBe(50, 1e-6);
    }

    [Fact]
    public void Without_readings_before_the_lift_they_are_asked_for()
    {
        (VehicleMotion motion, Part tire) = Moved(new ByHand { Limit = 120 }, null, isKnown: false);

        new TravelQuantity().Measure(Request(motion, tire)).NotEvaluated
            .ShouldBe("the travel of the rear left wheel before the lift is not in the file: type hub to fender as it stood, `hanging` and `bumped`, under `before-lift`");
    }

    private static (VehicleMotion Motion, Part Tire) Moved(ByHand hand, (double Open, double Closed)? shock, bool isKnown = true)
    {
        MeasuredLength size = hand.Length(300, 0);
        Part tire = hand.Add("tire", "tire", "rear/axle", new PartForm.Tire(new WheelSeat(hand.Point(new(0, 700, 0), 0), null, true), size, size, size, 200));
        if (shock is var (open, closed))
            foreach ((string id, double y) in new[] { ("shock-left", 500.0), ("shock-right", -500.0) })
                hand.Add(id, "shock", Vehicle.Chassis, new PartForm.Shock(
                    new Place(Vehicle.Chassis, hand.Point(new(0, y, 300), 0)), new Place("rear/axle", hand.Point(new(0, y, 0), 0)), hand.Length(closed, 1), hand.Length(open, 1), null));
        var before = new OriginalTravel(hand.Length(560, 2), isKnown ? hand.Length(650, 2) : null, hand.Length(500, 2));
        VehicleMotion bare = hand.Motion();
        Vehicle vehicle = bare.Vehicle with { OriginalTravels = ImmutableSortedDictionary<string, OriginalTravel>.Empty.Add("rear-left", before) };
        return (VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull(), tire);
    }

    private static MeasureRequest Request(VehicleMotion motion, Part part) => new(motion, part, null, double.PositiveInfinity);

    private static Measurement Measure(VehicleMotion motion, Part part) =>
        new TravelQuantity().Measure(Request(motion, part)).With(m => m.NotEvaluated.ShouldBeNull());
}
