using System.Text.Json.Nodes;
using ClearanceCheck.Cli.Tests.Reference;

namespace ClearanceCheck.Cli.Tests.Commands;

public sealed class PoseTests
{
    [Fact]
    public void Links_keep_their_lengths_and_bodies_their_shape()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode measured = Pose(shop, "rear.left=-102mm,rear.right=-103mm"), moved = Pose(shop, "rear.left=40mm,rear.right=-80mm");

        foreach (string link in new[] { "lower-link-left", "lower-link-right", "upper-link", "track-bar" })
            Length(moved, $"axles/rear/points/{link}-frame", $"axles/rear/points/{link}-axle")
                .ShouldBe(Length(measured, $"axles/rear/points/{link}-frame", $"axles/rear/points/{link}-axle"), 1e-6, link);
        string[] onAxle = ["axles/rear/points/hub-left", "axles/rear/points/track-bar-axle", "parts/axle-brake-line/path/3", "parts/rear-brake-hose/lower", "parts/rear-shock-left/lower"];
        foreach (string a in onAxle)
            foreach (string b in onAxle) Length(moved, a, b).ShouldBe(Length(measured, a, b), 1e-6);
        Math.Abs(Length(moved, "parts/rear-brake-hose/upper", onAxle[0]) - Length(measured, "parts/rear-brake-hose/upper", onAxle[0])).ShouldBeGreaterThan(1);
    }

    [Fact]
    public void In_the_measured_state_every_point_stands_where_it_was_typed()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode pose = Pose(shop, "rear.left=-102mm,rear.right=-103mm");

        Place(pose, "axles/rear/points/hub-left").ShouldBe([-612, 738, -402]);
        Place(pose, "axles/rear/points/upper-link-frame").ShouldBe([70, 246, -60]);
        pose["bodies"]!["rear/axle"]!["rotation"]!.AsArray().Select(v => v!.GetValue<double>()).ShouldBe([1, 0, 0, 0]);
        pose["wheels"]!["rear.left"]!["hubToFender"]!.GetValue<double>().ShouldBe(742);
        pose["wheels"]!["rear.right"]!["travel"]!.GetValue<double>().ShouldBe(-103);
    }

    [Fact]
    public void What_is_not_typed_is_ride_height_and_that_is_said()
    {
        using Workshop shop = Workshop.WithFixture();

        Answer text = shop.Run("pose", "inspection.yaml", "--at", "left=20mm");
        JsonNode pose = Pose(shop, "left=20mm");

        pose["pose"]!["rear.right"]!.GetValue<double>().ShouldBe(0);
        pose["takenAsZero"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldBe(["rear.right"]);
        text.Output.ShouldContain("taken as 0 mm, ride height: rear.right");
        text.Output.ShouldContain("hub to fender 620 mm");
    }

    [Fact]
    public void A_pose_beyond_a_stop_names_the_stop_and_one_beyond_the_travel_its_end()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode crushed = Pose(shop, "rear.left=150mm,rear.right=150mm"), beyond = Pose(shop, "rear.left=-200mm,rear.right=0mm");

        crushed["answer"]!.GetValue<string>().ShouldBe("stopped");
        crushed["stoppedBy"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldContain("rear-bump-stop-left crushed");
        crushed["stops"]!["rear-bump-stop-left crushed"]!.GetValue<double>().ShouldBeLessThan(0);
        beyond["stoppedBy"]!.AsArray().Select(n => n!.GetValue<string>()).ShouldContain("end of the travel looked at, rear.left droop");
    }

    [Fact]
    public void A_pose_that_links_can_t_reach_has_no_places_of_the_axle()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", new ThreeLinkFile().Write());

        JsonNode pose = JsonNode.Parse(shop.Run("pose", "axle.yaml", "--at", "left=5000mm,right=-5000mm", "--format", "json").Output)!;

        pose["answer"]!.GetValue<string>().ShouldBeOneOf("unreachable", "not-solved");
        pose["bodies"]!.AsObject().Select(b => b.Key).ShouldBe(["chassis"]);
        pose["points"]!.AsObject().ContainsKey("parts/line/path/1").ShouldBeTrue();
        pose["points"]!.AsObject().ContainsKey("parts/tube/path/1").ShouldBeFalse();
        pose["wheels"]!.AsObject().Count.ShouldBe(0);
    }

    [Theory]
    [InlineData("rear=articulated-left-up")]
    [InlineData("articulated-left-up")]
    public void A_pose_by_its_name_lies_on_the_stops_that_hold_it(string at)
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode pose = Pose(shop, at);
        string text = shop.Run("pose", "inspection.yaml", "--at", at).Output;

        pose["answer"]!.GetValue<string>().ShouldBe("solved");
        pose["takenAsZero"]!.AsArray().Count.ShouldBe(0);
        pose["stops"]!["rear-shock-right at full length"]!.GetValue<double>().ShouldBe(0, 1e-6);
        pose["stops"]!["rear-bump-stop-left crushed"]!.GetValue<double>().ShouldBe(0, 1e-6);
        pose["lengths"]!["rear-shock-right"]!.GetValue<double>().ShouldBe(526, 1e-6);
        text.ShouldContain("rear-bump-stop-left crushed: 0.00 (at this stop)");
        text.ShouldContain("rear-shock-right: 526.00 mm");
    }

    [Theory]
    [InlineData("full-droop")]
    [InlineData("articulated-left-up")]
    public void Joints_of_a_shaft_stand_as_the_posed_points_say(string at)
    {
        using Workshop shop = Workshop.WithFixture("wheel-well");

        JsonNode pose = Pose(shop, at), points = pose["points"]!, shaft = pose["shafts"]!["rear-driveshaft"]!;
        string text = shop.Run("pose", "inspection.yaml", "--at", at).Output;

        double[] Of(string point) => Numbers(points["parts/rear-driveshaft/" + point]!);
        double[] line = Minus(Of("second"), Of("first"));
        // The first flange was measured behind its joint, the second behind its own: the one against the line, the other along it.
        double first = Angle(Minus(Of("first"), Of("first/ahead")), line), second = Angle(Minus(Of("second/ahead"), Of("second")), line);
        pose["joints"]!["rear-driveshaft/first"]!.GetValue<double>().ShouldBe(first, 1e-6);
        pose["joints"]!["rear-driveshaft/second"]!.GetValue<double>().ShouldBe(second, 1e-6);
        shaft["slip"]!.GetValue<double>().ShouldBe(Length(line) - Length([-740, 10, -240]), 1e-6);
        shaft["engaged"]!.GetValue<double>().ShouldBe(62 - shaft["slip"]!.GetValue<double>(), 1e-6);
        text.ShouldContain($"rear-driveshaft/first: {first.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)} deg");

        static double[] Minus(double[] a, double[] b) => [.. a.Zip(b, (x, y) => x - y)];
        static double Length(double[] a) => Math.Sqrt(a.Sum(c => c * c));
        static double Angle(double[] a, double[] b) => Math.Acos(a.Zip(b, (x, y) => x * y).Sum() / (Length(a) * Length(b))) * 180 / Math.PI;
    }

    [Fact]
    public void A_wheel_stands_square_to_its_axis_and_both_wheels_of_a_solid_axle_share_one()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode wheels = Pose(shop, "rear.left=60mm,rear.right=-70mm")["wheels"]!;

        double[] left = Numbers(wheels["rear.left"]!["axis"]!), right = Numbers(wheels["rear.right"]!["axis"]!);
        double[] hubs = [.. Numbers(wheels["rear.left"]!["hub"]!).Zip(Numbers(wheels["rear.right"]!["hub"]!), (a, b) => a - b)];
        double track = Math.Sqrt(hubs.Sum(c => c * c));
        for (int k = 0; k < 3; k++)
        {
            left[k].ShouldBe(-right[k], 1e-8);
            left[k].ShouldBe(hubs[k] / track, 1e-8);
        }

        wheels["rear.left"]!["camber"]!.GetValue<double>().ShouldBe(-Math.Asin(hubs[2] / track) * 180 / Math.PI, 1e-7);
        wheels["rear.left"]!["steer"]!.GetValue<double>().ShouldBe(-wheels["rear.left"]!["toe"]!.GetValue<double>(), 1e-9);
        wheels["rear.right"]!["steer"]!.GetValue<double>().ShouldBe(wheels["rear.right"]!["toe"]!.GetValue<double>(), 1e-9);
        wheels["rear.left"]!["caster"].ShouldBeNull();
    }

    [Fact]
    public void At_ride_height_the_axle_has_not_moved()
    {
        using Workshop shop = Workshop.WithFixture();

        JsonNode axle = Pose(shop, "rear=ride-height")["axles"]!["rear"]!;

        foreach (string name in new[] { "shift", "forward", "yaw", "tilt" }) axle[name]!.GetValue<double>().ShouldBe(0, 1e-9, name);
    }

    [Theory]
    [InlineData("rear.left=80", "unit")]
    [InlineData("rear=full-dropo", "Did you mean full-droop?")]
    [InlineData("rear=80mm", "no pose named 80mm")]
    [InlineData("rear=80mm", "typed as rear.left=80mm")]
    [InlineData("rear=full-droop,rear.left=1mm", "typed twice")]
    [InlineData("rear.lft=80mm", "Did you mean rear.left?")]
    [InlineData("rear.left", "says no coordinate")]
    [InlineData("rear.left=1mm,rear.left=2mm", "typed twice")]
    [InlineData(",", "No pose is typed")]
    [InlineData("rear.left=80,5mm", "says no coordinate")]
    public void A_pose_that_can_t_be_read_is_refused_with_what_would_be_right(string at, string says)
    {
        using Workshop shop = Workshop.WithFixture();

        Answer answer = shop.Run("pose", "inspection.yaml", "--at", at);

        answer.Status.ShouldBe(2);
        answer.Output.ShouldBeEmpty();
        answer.Error.ShouldContain(says);
    }

    [Fact]
    public void All_faults_of_a_pose_are_said_at_once()
    {
        using Workshop shop = Workshop.WithFixture();

        shop.Run("pose", "inspection.yaml", "--at", "front.left=1mm,rear.left=x").Error.Split('\n').Count(l => l.StartsWith("error:", StringComparison.Ordinal)).ShouldBe(2);
    }

    private static double[] Numbers(JsonNode list) => [.. list.AsArray().Select(v => v!.GetValue<double>())];

    private static JsonNode Pose(Workshop shop, string at)
    {
        Answer answer = shop.Run("pose", "inspection.yaml", "--at", at, "--format", "json");
        answer.Status.ShouldBe(0);
        return JsonNode.Parse(answer.Output)!;
    }

    private static double[] Place(JsonNode pose, string path) => [.. pose["points"]![path]!.AsArray().Select(v => v!.GetValue<double>())];

    private static double Length(JsonNode pose, string a, string b) =>
        Math.Sqrt(Place(pose, a).Zip(Place(pose, b), (p, q) => (p - q) * (p - q)).Sum());
}
