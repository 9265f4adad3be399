using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

public sealed class EveryLayoutTests
{
    public static TheoryData<string, string?> All
    {
        get
        {
            var all = new TheoryData<string, string?>();
            foreach (string layout in Samples.Layouts)
            {
                all.Add(layout, null);
                foreach (string steering in LayoutCatalogue.Find(layout)!.Steerings) all.Add(layout, steering);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_layout_moves_with_every_steering_that_goes_with_it(string layout, string? steering)
    {
        (AxleModule module, _) = Samples.Of(layout, steering, 80).Module();
        int solved = 0, total = 0;
        foreach (double[] at in Corners(module))
        {
            total++;
            SolvedPose pose = module.Motion.At(at);
            if (!pose.IsSolved) continue;
            solved++;
            foreach (Joint joint in module.Motion.Linkage.Joints) Holds(joint, pose, at);
        }

        module.Motion.At(module.Motion.Linkage.StartSettings).Bodies.ToArray().ShouldAllBe(b => b.Translation.Length < 1e-9);
        solved.ShouldBe(total, $"{layout} with {steering}");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_layout_is_proved_around_ride_height(string layout, string? steering)
    {
        (AxleModule module, _) = Samples.Of(layout, steering, 60).Module();
        int d = module.Motion.Box.Dimensions;
        var bounds = new Curvature[d];
        const int Eighth = DyadicPose.Denominator / 8;
        DyadicPose low = new(3 * Eighth, 3 * Eighth, d > 2 ? 3 * Eighth : 0, d > 3 ? 3 * Eighth : 0), size = new(Eighth, Eighth, d > 2 ? Eighth : 0, d > 3 ? Eighth : 0);
        int wheel = module.Bodies.IndexOf(module.Axle.Left.Body);

        module.Motion.Curvatures(new DyadicCell(low, size), 0, wheel, [new(0, 790, 0)], bounds).ShouldBe(CurvatureBasis.Enclosed);
    }

    [Theory]
    [InlineData("cross-over", 1)]
    [InlineData("inverted-y", 1)]
    [InlineData("parallel", 0)]
    [InlineData("lock-only", 0)]
    public void The_steering_coordinate_is_how_far_a_knuckle_has_turned_to_the_left(string steering, int knuckle)
    {
        (AxleModule module, double[] parameters) = Samples.Of("three-link", steering, 80).Module();
        string side = knuckle == 0 ? "left" : "right";
        Vector3d lower = module.Axle.Points[$"kingpin-{side}-lower"].At(parameters), upper = module.Axle.Points[$"kingpin-{side}-upper"].At(parameters);
        foreach (double steer in (double[])[-0.28, -0.2, 0.1, 0.28])
        {
            SolvedPose pose = module.Motion.At([30, -40, steer]);

            Rotation turn = pose[module.Bodies.IndexOf("front/axle")].Rotation.Inverse * pose[module.Bodies.IndexOf($"front/knuckle-{side}")].Rotation;

            Vector3d.Dot(turn.ToRotationVector(), (upper - lower).NormalizedOr(default)).ShouldBe(steer, 1e-9);
            // Steered to the left, the front of the wheel goes to the left.
            Vector3d ahead = pose[module.Bodies.IndexOf(module.Axle.Left.Body)].ApplyToDirection(Vector3d.UnitX);
            Math.Sign(ahead.Y).ShouldBe(Math.Sign(steer));
        }
    }

    [Theory]
    [InlineData("cross-over")]
    [InlineData("parallel")]
    [InlineData("lock-only")]
    public void A_lock_is_where_the_wheel_that_turns_farther_stands(string steering)
    {
        (AxleModule module, double[] parameters) = Samples.Of("three-link", steering, 80).Module();
        double given = module.Axle.Steering!.Left;
        foreach (double end in (double[])[module.Motion.Box.Coordinates[2].Low, module.Motion.Box.Coordinates[2].High])
        {
            SolvedPose pose = module.Motion.At([0, 0, end]);

            double[] turns =
            [
                .. ((string[])["left", "right"]).Select(side =>
                {
                    Vector3d axis = module.Axle.Points[$"kingpin-{side}-upper"].At(parameters) - module.Axle.Points[$"kingpin-{side}-lower"].At(parameters);
                    Rotation turn = pose[module.Bodies.IndexOf("front/axle")].Rotation.Inverse * pose[module.Bodies.IndexOf($"front/knuckle-{side}")].Rotation;
                    return Math.Abs(Vector3d.Dot(turn.ToRotationVector(), axis.NormalizedOr(default)));
                }),
            ];

            turns.Max().ShouldBe(given, 1e-6);
        }
    }

    [Fact]
    public void The_steering_box_ends_the_pitman_arms_turn_on_both_sides()
    {
        var vehicle = Samples.Of("three-link", "cross-over", 80);
        var ended = new LayoutVehicle("three-link") { Steering = vehicle.Steering! with { BoxEndRad = 0.35 }, Limit = 80 };
        ended.TakePointsOf(vehicle);
        (AxleModule module, double[] parameters) = ended.Module();
        Stop stop = module.Motion.Stops.Single();
        int arm = module.Bodies.IndexOf("front/pitman-arm");
        Vector3d shaft = (module.Axle.Points["pitman-axis"].At(parameters) - module.Axle.Points["pitman-pivot"].At(parameters)).NormalizedOr(default);
        foreach (double steer in (double[])[-0.55, -0.3, -0.1, 0.2, 0.4, 0.55])
        {
            SolvedPose pose = module.Motion.At([0, 0, steer]);

            double turned = Math.Abs(Vector3d.Dot(pose[arm].Rotation.ToRotationVector(), shaft));

            (stop.Reserve(pose.Relative(stop.FirstBody, stop.SecondBody)) > 0).ShouldBe(turned < 0.35, $"{steer}: turned {turned}");
        }
    }

    private static IEnumerable<double[]> Corners(AxleModule module)
    {
        int d = module.Motion.Box.Dimensions;
        for (int corner = 0; corner < 1 << d; corner++)
        {
            var at = new double[d];
            for (int k = 0; k < d; k++)
            {
                PoseCoordinate c = module.Motion.Box.Coordinates[k];
                at[k] = ((corner >> k) & 1) == 0 ? c.Low : c.High;
            }

            yield return at;
        }
    }

    // Told without the engine's own equations.
    private static void Holds(Joint joint, SolvedPose pose, double[] at)
    {
        double off = joint switch
        {
            Joint.Rod j => (pose[j.FirstBody].Apply(j.FirstPoint) - pose[j.SecondBody].Apply(j.SecondPoint)).Length - j.LengthMm,
            Joint.Ball j => (pose[j.FirstBody].Apply(j.Point) - pose[j.SecondBody].Apply(j.Point)).Length,
            Joint.Hinge j => (pose[j.FirstBody].Apply(j.Point) - pose[j.SecondBody].Apply(j.Point)).Length
                + (pose[j.FirstBody].Apply(j.Point + j.Axis) - pose[j.SecondBody].Apply(j.Point + j.Axis)).Length,
            Joint.Slide j => Vector3d.Cross(pose[j.SecondBody].Apply(j.Point) - pose[j.FirstBody].Apply(j.Point), j.Axis.NormalizedOr(default)).Length,
            Joint.Travel j => pose[j.Body].Apply(j.Point).Z - j.Point.Z - at[j.Coordinate],
            _ => 0,
        };
        Math.Abs(off).ShouldBeLessThan(1e-8, joint.Name);
    }
}
