using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>An axle known by where it was seen, against the three-link axle that it was seen on.</summary>
public sealed class PositionsLayoutTests
{
    private static readonly Vector3d s_left = new(0, 795, 0), s_right = new(0, -795, 0), s_marker = new(-60, 250, 170);

    [Fact]
    public void The_axle_goes_through_all_measured_positions_and_smoothly_between()
    {
        (AxleModule true3, _) = Samples.Of("three-link").Module();
        (double Left, double Right)[] seen = [(0, 0), (-120, -120), (-60, -60), (60, 60), (120, 120), (80, -80), (-80, 80), (110, -110), (-110, 110)];
        AxleModule positions = Seen(true3, seen);

        foreach ((double left, double right) in seen) Apart(true3, positions, left, right).ShouldBeLessThan(1e-9);
        foreach ((double left, double right) in ((double, double)[])[(-90, -90), (30, 30), (100, 100)]) Apart(true3, positions, left, right).ShouldBeLessThan(0.2);
        foreach ((double left, double right) in ((double, double)[])[(60, -60), (100, 20), (-40, 90)]) Apart(true3, positions, left, right).ShouldBeLessThan(6);
    }

    [Fact]
    public void Its_motion_is_proved_like_any_other()
    {
        (AxleModule true3, _) = Samples.Of("three-link").Module();
        AxleModule positions = Seen(true3, [(0, 0), (-100, -100), (100, 100), (90, -90)]);
        var bounds = new Curvature[2];

        positions.Motion.Curvatures(DyadicCell.Whole(2), 0, 1, [s_left], bounds).ShouldBe(CurvatureBasis.Enclosed);

        double most = 0;
        for (double at = -100; at <= 100; at += 20)
        {
            Vector3d up = positions.Motion.At([at + 1, 20])[1].Apply(s_left), down = positions.Motion.At([at - 1, 20])[1].Apply(s_left);
            most = Math.Max(most, (up + down - (2 * positions.Motion.At([at, 20])[1].Apply(s_left))).Length);
        }

        bounds[0].Length.ShouldBeInRange(most * (1 - 1e-6), 10 * most);
    }

    private static double Apart(AxleModule one, AxleModule other, double left, double right)
    {
        SolvedPose a = one.Motion.At([left, right]), b = other.Motion.At([left, right]);
        return new[] { s_left, s_right, s_marker }.Max(p => (a[1].Apply(p) - b[1].Apply(p)).Length);
    }

    private static AxleModule Seen(AxleModule on, (double Left, double Right)[] seen)
    {
        var builder = new ParameterVectorBuilder();
        MeasuredPoint Point(string name, Vector3d at) => builder.Point(name, at, 2, false);
        ImmutableSortedDictionary<string, MeasuredPoint> points = ImmutableSortedDictionary<string, MeasuredPoint>.Empty
            .Add("hub-left", Point("l", s_left)).Add("hub-right", Point("r", s_right)).Add("marker", Point("m", s_marker));
        var compared = ImmutableArray.CreateBuilder<ComparedPoint>();
        var states = ImmutableSortedDictionary.CreateBuilder<string, AxleState>(StringComparer.Ordinal);
        MeasuredLength ride = builder.Length("ride", 600, 2, false);
        foreach ((double left, double right) in seen.Skip(1))
        {
            string name = $"state {left} {right}";
            RigidMotion axle = on.Motion.At([left, right])[1];
            compared.Add(new ComparedPoint("hub-left", name, Point(name, axle.Apply(s_left))));
            compared.Add(new ComparedPoint("hub-right", name, Point(name, axle.Apply(s_right))));
            compared.Add(new ComparedPoint("marker", name, Point(name, axle.Apply(s_marker))));
            states[name] = new AxleState(name, builder.Length(name, 600 - left, 2, false), builder.Length(name, 600 - right, 2, false));
        }

        var axleModel = new Axle
        {
            Name = "front",
            Layout = "positions",
            Points = points,
            FreeBodies = [],
            FreeJoints = [],
            MeasuredIn = "ride",
            ComparedPoints = compared.ToImmutable(),
            OtherStates = states.ToImmutable(),
            Left = new Wheel("front/axle", points["hub-left"], null, ride),
            Right = new Wheel("front/axle", points["hub-right"], null, ride),
            DroopLimit = builder.Length("d", 120, 2, false),
            BumpLimit = builder.Length("b", 120, 2, false),
        };
        var vehicle = new Vehicle
        {
            Description = new VehicleDescription { Name = "test" },
            Scope = ["front"],
            FixedBodies = [],
            Assumptions = [],
            Readings = [],
            Parts = [],
            Axles = [axleModel],
            Parameters = builder.Build(),
        };
        (AxleModule? module, Mechanics.Linkages.LinkageFault? fault) = AxleModuleBuilder.Build(vehicle, axleModel, vehicle.Parameters.Nominal.ToArray());
        fault.ShouldBeNull();
        return module!;
    }
}
