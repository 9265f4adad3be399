using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Attitude;
using ClearanceCheck.Kinematics.Tests.Layouts;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Tables;
using ClearanceCheck.Quantities.OverCentres;
using ClearanceCheck.Quantities.Steering;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>What the wheels do by themselves, against the independent tables of steered axles (made with other programs; see <see cref="ReferenceTable"/>).</summary>
public sealed class SteeringQuantityTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void A_wishbone_wheel_steers_itself_as_the_table_says()
    {
        (VehicleMotion motion, Part left, _) = Moved(Samples.Of("double-wishbones", "rack", limit: 90));
        ReferenceTable table = ReferenceTable.Read("double-wishbone");
        double[][] straight = [.. table.Rows.Where(r => table.Value(r, "rack") == 0)];
        double ride = table.Value(straight.Single(r => table.Value(r, "travel") == 0), "toe_in");
        double most = straight.Max(r => Math.Abs(table.Value(r, "toe_in") - ride));

        Measurement steer = Measure(new BumpSteerQuantity(), motion, left);
        Measurement toe = Measure(new ToeChangeQuantity(), motion, left);

        // The table's wheel starts with a toe and camber of its own, which its turns carry along: a tenth of a degree.
        steer.Value.ShouldBe(most, 0.12);
        steer.Bound.ShouldBeInRange(steer.Value, steer.Value + 0.11);
        // Both wheels in step, mirrored: the toe of both changes twice as far.
        toe.Value.ShouldBe(2 * steer.Value, 0.11);
        foreach (double[] row in straight)
            new BumpSteerQuantity().At(Request(motion, left), [table.Value(row, "travel"), 0, 0])!.Value.ShouldBe(Math.Abs(table.Value(row, "toe_in") - ride), 0.12);
    }

    [Fact]
    public void A_solid_axle_steers_both_wheels_as_the_table_says_and_holds_their_toe()
    {
        (VehicleMotion motion, Part left, _) = Moved(Samples.Of("three-link", "cross-over", limit: 60));
        ReferenceTable table = ReferenceTable.Read("crossover-steering");
        double[][] straight = [.. table.Rows.Where(r => table.Value(r, "pitman_angle") == 0)];
        double ride = table.Value(straight.Single(r => table.Value(r, "heave") == 0), "steerL_left_positive");
        foreach (double[] row in straight.Where(r => Math.Abs(table.Value(r, "heave")) <= 60))
        {
            double heave = table.Value(row, "heave");
            new BumpSteerQuantity().At(Request(motion, left), [heave, heave, table.Value(row, "knuckleR_turn") * Degree])!.Value
                .ShouldBe(Math.Abs(table.Value(row, "steerL_left_positive") - ride), 0.12);
        }

        Measurement steer = Measure(new BumpSteerQuantity(), motion, left);
        Measurement toe = Measure(new ToeChangeQuantity(), motion, left);

        double sampled = Sampled(motion.Modules[0], motion.Parameters.Span);
        steer.Bound.ShouldBeGreaterThanOrEqualTo(sampled - 1e-6);
        steer.Value.ShouldBeInRange(sampled - 0.11, sampled + 0.05);
        (steer.Bound - steer.Value).ShouldBeLessThan(0.11);
        // A tie rod as long as the track bar is not: it holds the toe to a fraction of what the wheels steer.
        toe.Value.ShouldBeLessThan(steer.Value / 3);
    }

    [Fact]
    public void Where_only_the_locks_are_known_the_drag_link_is_asked_for()
    {
        (VehicleMotion motion, Part left, _) = Moved(Samples.Of("three-link", "lock-only", limit: 60));

        new BumpSteerQuantity().Measure(Request(motion, left)).NotEvaluated
            .ShouldBe("what steers the front wheels is not in the file, only how far they turn: measure the drag link or rack and type its points");
    }

    [Fact]
    public void A_tie_rod_keeps_the_angle_to_its_arm_that_samples_leave_it()
    {
        (VehicleMotion motion, _, Part rod) = Moved(Samples.Of("three-link", "cross-over", limit: 60), lockRad: 0.1);

        Measurement left = Measure(new OverCentreQuantity(), motion, rod);

        // Pose by pose from the law of cosines in the plane of the arm, over travels and the whole lock.
        AxleModule module = motion.Modules[0];
        var random = new Random(5);
        double least = double.PositiveInfinity;
        for (int i = 0; i < 3000; i++)
        {
            double[] pose = [.. module.Motion.Box.Coordinates.Select(c => Math.Clamp(c.Low + ((c.High - c.Low) * ((1.2 * random.NextDouble()) - 0.1)), c.Low, c.High))];
            if (module.Motion.At(pose.AsSpan()) is { IsSolved: true } at) least = Math.Min(least, Left(module, at, motion.Parameters.Span));
        }

        left.Bound.ShouldBeLessThanOrEqualTo(least + 1e-6);
        left.Value.ShouldBe(least, 0.3);
        (left.Value - left.Bound).ShouldBeLessThan(0.11);
        left.Places[0].StandardUncertainty.ShouldBeGreaterThan(0);
    }

    // The smaller angle of rod and arm to one line, at both ends of the tie rod, seen along the kingpins.
    private static double Left(AxleModule module, SolvedPose at, ReadOnlySpan<double> parameters)
    {
        double least = double.PositiveInfinity;
        Vector3d[] ends = new Vector3d[2];
        foreach ((int i, string side) in new[] { (0, "left"), (1, "right") })
            ends[i] = at[module.Bodies.IndexOf($"front/knuckle-{side}")].Apply(module.Axle.Points[$"tie-rod-{side}"].At(parameters));
        foreach ((int i, string side) in new[] { (0, "left"), (1, "right") })
        {
            RigidMotion knuckle = at[module.Bodies.IndexOf($"front/knuckle-{side}")];
            Vector3d lower = knuckle.Apply(module.Axle.Points[$"kingpin-{side}-lower"].At(parameters)), upper = knuckle.Apply(module.Axle.Points[$"kingpin-{side}-upper"].At(parameters));
            Vector3d line = (upper - lower).NormalizedOr(Vector3d.UnitZ), arm = Flat(ends[i] - lower), rod = Flat(ends[1 - i] - ends[i]);
            double angle = Math.Acos(Vector3d.Dot(arm, rod) / (arm.Length * rod.Length)) / Degree;
            least = Math.Min(least, Math.Min(angle, 180 - angle));

            Vector3d Flat(Vector3d v) => v - (Vector3d.Dot(v, line) * line);
        }

        return least;
    }

    // Poses in which the pitman arm stands where it was measured, found by halving the steering, and how far the left wheel turned in them.
    private static double Sampled(AxleModule module, ReadOnlySpan<double> parameters)
    {
        Vector3d end = module.Axle.Points["drag-link-pitman"].At(parameters), pivot = module.Axle.Points["pitman-pivot"].At(parameters);
        Vector3d way = Vector3d.Cross(module.Axle.Points["pitman-axis"].At(parameters) - pivot, end - pivot);
        int pitman = module.Bodies.IndexOf("front/pitman-arm");
        double most = 0, ride = WheelAttitude.Of(module, true, module.Motion.At([0, 0, 0]), 0, parameters).SteerRad;
        for (int i = 0; i < 49; i++)
        {
            double left = -60 + (20 * (i % 7)), right = -60 + (20 * (i / 7)), low = -0.2, high = 0.2;
            double Off(double steer) => Vector3d.Dot(way, module.Motion.At([left, right, steer])[pitman].Apply(end) - end);
            bool rises = Off(high) > Off(low);
            for (int k = 0; k < 40; k++)
                if (Off((low + high) / 2) > 0 == rises) high = (low + high) / 2;
                else low = (low + high) / 2;
            most = Math.Max(most, Math.Abs(WheelAttitude.Of(module, true, module.Motion.At([left, right, low]), 0, parameters).SteerRad - ride));
        }

        return most / Degree;
    }

    private static (VehicleMotion Motion, Part LeftTire, Part TieRod) Moved(LayoutVehicle axle, double? lockRad = null)
    {
        Vehicle bare = axle.Build();
        Axle front = lockRad is { } turn ? bare.Axles[0] with { Steering = bare.Axles[0].Steering! with { Left = turn, Right = turn } } : bare.Axles[0];
        Part tire = new()
        {
            Id = "left-tire",
            Name = "Left tire",
            Kind = PartKinds.Find("tire")!,
            Body = front.Left.Body,
            Touches = [],
            Form = new PartForm.Tire(new WheelSeat(front.Left.Hub, null, true), front.BumpLimit, front.BumpLimit, front.BumpLimit, 200),
        };
        Part rod = front.Points.TryGetValue("tie-rod-left", out MeasuredPoint end)
            ? tire with
            {
                Id = "tie-rod",
                Name = "Tie rod",
                Kind = PartKinds.Find("steering-rod")!,
                Body = "front/knuckle-left",
                Form = new PartForm.Link(new Place("front/knuckle-left", end), new Place("front/knuckle-right", front.Points["tie-rod-right"]), front.BumpLimit),
            }
            : tire;
        Vehicle vehicle = bare with { Axles = [front], Parts = rod == tire ? [tire] : [tire, rod] };
        return (VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull(), tire, rod);
    }

    private static MeasureRequest Request(VehicleMotion motion, Part part) => new(motion, part, null, double.PositiveInfinity);

    private static Measurement Measure(Quantity quantity, VehicleMotion motion, Part part) =>
        quantity.Measure(Request(motion, part)).With(m => m.NotEvaluated.ShouldBeNull());
}
