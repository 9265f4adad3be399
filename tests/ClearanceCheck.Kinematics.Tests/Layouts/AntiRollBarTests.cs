using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

public sealed class AntiRollBarTests
{
    private static readonly Vector3d s_arm = new(-20, 430, 105), s_link = new(-12, 440, -62), s_pivot = new(-260, 380, 120);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Each_arm_turns_about_the_bars_line_as_far_as_its_link_asks(bool onAxle)
    {
        (AxleModule module, _) = Module(onAxle);
        foreach ((double left, double right) in ((double, double)[])[(70, 70), (-80, -80), (80, -80), (-60, 75)])
        {
            SolvedPose pose = module.Motion.At([left, right]);
            RigidMotion axle = pose[module.Bodies.IndexOf("front/axle")], held = onAxle ? axle : RigidMotion.Identity, linked = onAxle ? RigidMotion.Identity : axle;
            for (int side = 1; side >= -1; side -= 2)
            {
                RigidMotion arm = pose[module.Bodies.IndexOf($"front/anti-roll-bar-{(side > 0 ? "left" : "right")}")];

                // A circle about the line, told in the frame of what holds the bar: A cos a + B sin a = C from the link's length.
                Vector3d seen = held.Inverse.Apply(linked.Apply(On(s_link, side)));
                double angle = Angle(On(s_arm, side), On(s_pivot, side), seen, (s_link - s_arm).Length);

                (held.Inverse * arm).Rotation.ToRotationVector().Y.ShouldBe(angle, 1e-9);
            }
        }
    }

    [Fact]
    public void One_wheel_up_and_one_down_twist_the_bar()
    {
        (AxleModule module, _) = Module(onAxle: false);
        SolvedPose pose = module.Motion.At([80, -80]);

        double left = pose[module.Bodies.IndexOf("front/anti-roll-bar-left")].Rotation.ToRotationVector().Y, right = pose[module.Bodies.IndexOf("front/anti-roll-bar-right")].Rotation.ToRotationVector().Y;

        Math.Sign(left).ShouldBe(-Math.Sign(right));
        Math.Abs(left - right).ShouldBeGreaterThan(0.3);
    }

    // About y, the pivot's line; the root nearest to zero. A turn by a takes (x, z) to (x cos a + z sin a, z cos a - x sin a).
    private static double Angle(Vector3d arm, Vector3d pivot, Vector3d link, double length)
    {
        Vector3d r = arm - pivot, d = link - pivot;
        double across = d.Y - r.Y, c = ((r.X * r.X) + (r.Z * r.Z) + (d.X * d.X) + (d.Z * d.Z) + (across * across) - (length * length)) / 2;
        double a = (d.X * r.X) + (d.Z * r.Z), b = (d.X * r.Z) - (d.Z * r.X);
        double middle = Math.Atan2(b, a), half = Math.Acos(c / Math.Sqrt((a * a) + (b * b)));
        return new[] { middle + half, middle - half }.MinBy(Math.Abs);
    }

    private static Vector3d On(Vector3d left, int side) => new(left.X, side * left.Y, left.Z);

    private static (AxleModule Module, double[] Parameters) Module(bool onAxle)
    {
        var vehicle = new LayoutVehicle("three-link") { Bar = new AntiRollBar(onAxle), Limit = 100 };
        vehicle.TakePointsOf(Samples.Of("three-link"));
        return vehicle.Both("bar-pivot-*", s_pivot).Both("bar-arm-*", s_arm).Both("bar-link-*", s_link).Module();
    }
}
