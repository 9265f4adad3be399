using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests;

/// <summary>Points that were measured in another state than their axle's layout are carried back to it.</summary>
public sealed class StatePlacingTests
{
    private const double Ride = 640;
    private static readonly Vector3d OnAxle = new(-130, 412, -57);
    private static readonly Vector3d OnFrame = new(-150, 380, 320);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-95, -95)]
    [InlineData(70, -60)]
    public void A_point_seen_in_a_state_comes_back_to_where_it_is_on_its_body(double left, double right)
    {
        Vehicle vehicle = Build(left, right, At(left, right, OnAxle));

        VehicleMotion motion = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

        (Lower(vehicle).At.At(motion.Parameters.Span) - OnAxle).Length.ShouldBeLessThan(1e-9);
        (Upper(vehicle).At.At(motion.Parameters.Span) - OnFrame).Length.ShouldBe(0);
    }

    [Fact]
    public void Stops_and_what_follows_two_points_are_made_of_the_placed_points()
    {
        Vehicle stated = Build(70, -60, At(70, -60, OnAxle)), plain = Build(0, 0, OnAxle) with { StatedPoints = [] };
        AxleModule one = Module(stated), other = Module(plain);
        SolvedPose a = one.Motion.At([30, -45]), b = other.Motion.At([30, -45]);

        for (int i = 0; i < 2; i++)
            one.Motion.Stops[i].Reserve(a.Relative(one.Motion.Stops[i].FirstBody, one.Motion.Stops[i].SecondBody))
                .ShouldBe(other.Motion.Stops[i].Reserve(b.Relative(other.Motion.Stops[i].FirstBody, other.Motion.Stops[i].SecondBody)), 1e-8);
        int follower = one.Bodies.IndexOf(AxleModule.FollowerName("shock", atFirst: false));
        (a[follower].Apply(OnAxle) - b[follower].Apply(OnAxle)).Length.ShouldBeLessThan(1e-8);
    }

    [Fact]
    public void A_state_that_the_links_do_not_reach_is_named_with_its_travels()
    {
        Vehicle vehicle = Build(900, 905, OnAxle);

        (VehicleMotion? motion, string? axle, MotionFault? fault) = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray());

        motion.ShouldBeNull();
        axle.ShouldBe("rear");
        fault.ShouldBe(new MotionFault.StateOutOfReach("seen", 900, 905));
    }

    [Fact]
    public void A_change_of_a_reading_of_the_state_moves_the_placed_point()
    {
        Vehicle vehicle = Build(-95, -95, At(-95, -95, OnAxle));
        AxleState seen = vehicle.Axles[0].OtherStates["seen"];
        double[] changed = vehicle.Parameters.Shifted(seen.LeftHubToFender!.Value.Index, 2);
        changed[seen.RightHubToFender!.Value.Index] += 2;

        VehicleMotion motion = VehicleMotion.Build(vehicle, changed).Motion.ShouldNotBeNull();

        // The axle hung 2 mm lower than was thought, so the point sits 2 mm higher on it, but for how the links turn the axle.
        (Lower(vehicle).At.At(motion.Parameters.Span) - OnAxle).Z.ShouldBe(2, 0.1);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(7.9, false)]
    [InlineData(8.1, true)]
    [InlineData(14, true)]
    public void A_point_typed_again_in_a_second_state_is_said_where_it_lies_farther_than_its_give_or_take(double off, bool said)
    {
        // Half-widths of 3 mm at both places and 2 mm beyond: 8 mm.
        Vector3d seen = At(-95, -95, ThreeLinkVehicle.HubLeft) + new Vector3d(0, 0, off);
        Vehicle vehicle = Compared(-95, -95, seen);
        VehicleMotion motion = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

        ModelAssumption[] sentences = [.. PointComparison.Of(motion)];

        sentences.Length.ShouldBe(said ? 1 : 0);
        if (said) sentences[0].Text.ShouldStartWith($"hub-left in the state seen was typed {off:0} mm from where the model has it, more than the 8 mm");
    }

    [Fact]
    public void Without_points_of_other_states_the_parameters_stay_as_they_are()
    {
        Vehicle vehicle = new ThreeLinkVehicle().Build("three-link");
        ReadOnlyMemory<double> typed = vehicle.Parameters.Nominal.ToArray();

        StatePlacing.Place(vehicle, typed).Parameters.ShouldBe(typed);
    }

    private static Vector3d At(double left, double right, Vector3d onAxle) => Module(new ThreeLinkVehicle().Build("three-link")).Motion.At([left, right])[1].Apply(onAxle);

    private static AxleModule Module(Vehicle vehicle) => VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull().Modules.Single();

    // A shock whose lower end was seen in a state with those travels.
    private static Vehicle Build(double left, double right, Vector3d seen)
    {
        var source = new ThreeLinkVehicle { HubToFenderRide = Ride };
        Place upper = source.On(Vehicle.Chassis, OnFrame), lower = source.On("rear/axle", seen);
        var sleeves = new Sleeves(true, source.Length(60), source.Length(300), source.Length(18), source.Length(250));
        var shock = new PartForm.Shock(upper, lower, source.Length(200), source.Length(600), sleeves);
        source.Parts.Add(new Part { Id = "shock", Name = "shock", Kind = PartKinds.Find("shock")!, Body = Vehicle.Chassis, Form = shock, Touches = [] });
        var state = new AxleState("seen", source.Length(Ride - left), source.Length(Ride - right));
        Vehicle vehicle = source.Build("three-link");
        return vehicle with { Axles = [WithState(vehicle.Axles[0], state)], StatedPoints = [new StatedPoint(lower.At, "rear/axle", "seen")] };
    }

    private static Vehicle Compared(double left, double right, Vector3d seen)
    {
        var source = new ThreeLinkVehicle { HubToFenderRide = Ride, Within = 3 };
        MeasuredPoint typed = source.On("rear/axle", seen).At;
        var state = new AxleState("seen", source.Length(Ride - left), source.Length(Ride - right));
        Vehicle vehicle = source.Build("three-link");
        Axle axle = WithState(vehicle.Axles[0], state);
        return vehicle with
        {
            Axles = [axle with { Points = axle.Points.Add("hub-left", axle.Left.Hub), ComparedPoints = [new ComparedPoint("hub-left", "seen", typed)] }],
        };
    }

    private static Axle WithState(Axle axle, AxleState state) =>
        axle with { MeasuredIn = "ride", OtherStates = ImmutableSortedDictionary<string, AxleState>.Empty.Add(state.State, state) };

    private static Place Lower(Vehicle vehicle) => vehicle.Parts[0].Form.Ends[1];

    private static Place Upper(Vehicle vehicle) => vehicle.Parts[0].Form.Ends[0];
}
