using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.AngleDifferences;
using ClearanceCheck.Quantities.Engagements;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Quantities.Reserves;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>Joints and splines of a shaft that hangs 800 mm behind its flange, over an axle that moves straight up and down.</summary>
public sealed class ShaftQuantityTests
{
    [Fact]
    public void A_joint_bends_most_where_the_axle_hangs_lowest()
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        Part shaft = Shaft(hand, new(-100, 0, 0), new(100, 0, 0), within: 1);

        Measurement measured = Measure(new JointAngleQuantity(), hand.Motion(), shaft);

        // A roll of the axle moves no point of the centre plane. On 12 m rods 60 mm of travel turn the pinion by nothing to speak of.
        double slope = Math.Atan2(60, 800);
        measured.Value.ShouldBe(Degrees(slope), 0.02);
        measured.Bound.ShouldBeInRange(measured.Value, measured.Value + 0.11);
        measured.Places[0].EndsAtNoStop.ShouldBeTrue();
        // Heights count: the point ahead 1/100 rad a mm, the flange that less cos^2/800, the far joint and the travel's end cos^2/800.
        double far = Math.Cos(slope) * Math.Cos(slope) / 800;
        double expected = Math.Sqrt(Square(ByHand.U(1) / 100) + Square(ByHand.U(1) * ((1 / 100.0) - far)) + Square(ByHand.U(1) * far) + Square(ByHand.U(4) * far));
        measured.Places[0].StandardUncertainty.ShouldBe(Degrees(expected), 0.02 * Degrees(expected));
    }

    [Fact]
    public void A_joint_without_a_direction_says_which_point_to_measure()
    {
        var hand = new ByHand { Limit = 60 };
        Part shaft = Shaft(hand, new(-100, 0, 0), null);

        new JointAngleQuantity().Measure(Request(hand.Motion(), shaft)).NotEvaluated
            .ShouldBe("which way the flange at the second end of shaft points is not in the file: measure a second point on its axis and type it as `ahead` of that joint");
    }

    [Fact]
    public void Splines_engage_least_where_the_shaft_is_longest_and_bottom_where_it_is_shortest()
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        Part shaft = Shaft(hand, new(-100, 0, 0), new(100, 0, 0));
        VehicleMotion motion = hand.Motion();

        Measurement engaged = Measure(new EngagementQuantity(), motion, shaft);
        Measurement left = Measure(new ReserveQuantity(), motion, shaft);

        // 40 mm of 90 mm as measured, level; at 60 mm of travel the joints are sqrt(800^2 + 60^2) apart, less what rods of 12 m pull the axle ahead.
        engaged.Value.ShouldBe(40 + 800 - Math.Sqrt((800 * 800) + (60 * 60)) + (60 * 60 / 24000.0), 0.01);
        engaged.Bound.ShouldBeInRange(engaged.Value - 0.6, engaged.Value);
        left.Value.ShouldBe(50, 0.2);
        left.Bound.ShouldBeInRange(left.Value - 0.6, left.Value);
    }

    [Fact]
    public void Splines_that_nobody_measured_are_asked_for()
    {
        var hand = new ByHand { Limit = 60 };
        Part shaft = hand.Add("shaft", "driveshaft", Vehicle.Chassis, new PartForm.Shaft(
            new Place(Vehicle.Chassis, hand.Point(new(800, 0, 0), 1)), new Place("rear/axle", hand.Point(new(0, 0, 0), 1)), Sleeves(hand)));

        string? said = new EngagementQuantity().Measure(Request(hand.Motion(), shaft)).NotEvaluated;

        said.ShouldBe("the splines of shaft are not in the file: measure how long they are and how much of that is engaged, and type both under `splines`");
    }

    [Theory]
    [InlineData(3, 7.9)]
    [InlineData(5, 8.9)]
    [InlineData(8, 10.8)]
    public void Angles_of_a_published_table_are_as_uneven_as_its_first_column(double first, double second)
    {
        // Engineering site's "vehicle driveline design" page, table of two joint angles at 1500 rpm, after SAE AE-7 (looked up): joint 2 at
        // most 7.3 deg beside a straight joint 1, 7.9 beside 3, 8.9 beside 5, 10.8 beside 8. The table is rounded up to tenths.
        var hand = new ByHand { Limit = 60 };
        // Both flanges dip below the level shaft: in one plane, yokes in phase.
        Part shaft = Shaft(hand, Tilted(-100, first), Tilted(100, second));

        Measurement measured = Measure(new AngleDifferenceQuantity(), hand.Motion(), shaft);

        measured.Value.ShouldBe(7.3, 0.1);
        measured.Bound.ShouldBe(measured.Value);
        measured.Places[0].Pose.ShouldBe([0, 0]);
    }

    [Fact]
    public void Flanges_that_stand_parallel_are_even()
    {
        var hand = new ByHand { Limit = 60 };
        Part shaft = Shaft(hand, Tilted(-100, 6), Tilted(-100, 6));

        Measure(new AngleDifferenceQuantity(), hand.Motion(), shaft).Value.ShouldBe(0, 1e-6);
    }

    [Fact]
    public void Joints_that_are_even_as_measured_are_as_uneven_as_their_readings_may_be_wrong()
    {
        var hand = new ByHand { Limit = 60, RodWithin = 0 };
        Part shaft = Shaft(hand, Tilted(-100, 6), Tilted(-100, 6), within: 1);

        Measurement measured = Measure(new AngleDifferenceQuantity(), hand.Motion(), shaft);

        // The height of the point ahead of one joint, within 1 mm of 100 mm, turns it by 0.33 deg: sqrt(6.33^2 - 6^2) = 2.0 deg already.
        double one = Degrees(ByHand.U(1) / 100);
        measured.Value.ShouldBe(0, 1e-6);
        measured.Places[0].StandardUncertainty.ShouldBeGreaterThan(Math.Sqrt(Square(6 + one) - 36));
    }

    private static Vector3d Tilted(double along, double degrees) => new(along, 0, -100 * Math.Tan(degrees * Math.PI / 180));

    private static Part Shaft(ByHand hand, Vector3d? firstAhead, Vector3d? secondAhead, double within = 0)
    {
        Vector3d first = new(800, 0, 0), second = new(0, 0, 0);
        MeasuredPoint? Ahead(Vector3d at, Vector3d? by) => by is { } way ? hand.Point(at + way, within) : null;
        return hand.Add("shaft", "driveshaft", Vehicle.Chassis, new PartForm.Shaft(
            new Place(Vehicle.Chassis, hand.Point(first, within)), new Place("rear/axle", hand.Point(second, within)), Sleeves(hand))
        {
            FirstEnd = new ShaftEnd(ShaftJointKind.Single, Ahead(first, firstAhead)),
            SecondEnd = new ShaftEnd(ShaftJointKind.Single, Ahead(second, secondAhead)),
            Splines = new Splines(hand.Length(90, 0), hand.Length(40, 0)),
        });
    }

    private static Sleeves Sleeves(ByHand hand) => new(true, hand.Length(60, 0), hand.Length(500, 0), hand.Length(40, 0), hand.Length(400, 0));

    private static MeasureRequest Request(VehicleMotion motion, Part part) => new(motion, part, null, double.PositiveInfinity);

    private static Measurement Measure(Quantity quantity, VehicleMotion motion, Part part) =>
        quantity.Measure(Request(motion, part)).With(m => m.NotEvaluated.ShouldBeNull());

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    private static double Square(double x) => x * x;
}
