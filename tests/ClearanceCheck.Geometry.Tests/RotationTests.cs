using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests;

/// <summary>Quaternions against rotation matrices written out by hand (Rodrigues' formula, from memory).</summary>
public sealed class RotationTests
{
    private readonly SplitMix64 g = new(61);

    [Fact]
    public void Turning_about_an_axis_is_the_rotation_matrix()
    {
        for (int i = 0; i < 1000; i++)
        {
            Vector3d axis = g.UnitVector(), v = g.Cube(1000);
            double angle = g.In(-10, 10);

            Near(Rotation.About(axis * g.In(0.01, 100), angle).Apply(v), ByMatrix(axis, angle, v), 2e-12);
        }
    }

    [Fact]
    public void A_right_hand_quarter_turn_about_z_takes_x_to_y()
    {
        Near(Rotation.About(Vector3d.UnitZ, Math.PI / 2).Apply(Vector3d.UnitX), Vector3d.UnitY, 1e-15);
        Near(Rotation.About(Vector3d.UnitX, Math.PI / 2).Apply(Vector3d.UnitY), Vector3d.UnitZ, 1e-15);
    }

    [Fact]
    public void A_rotation_comes_back_from_the_axes_it_makes()
    {
        for (int i = 0; i < 1000; i++)
        {
            // Half turns too, where the quaternion's first number is nothing.
            Rotation turn = Rotation.About(g.UnitVector(), i % 5 == 0 ? Math.PI : g.In(-4, 4));

            var back = Rotation.FromAxes(turn.Apply(Vector3d.UnitX), turn.Apply(Vector3d.UnitY), turn.Apply(Vector3d.UnitZ));

            Vector3d v = g.Cube(1000);
            Near(back.Apply(v), turn.Apply(v), 2e-12);
        }
    }

    [Fact]
    public void A_product_applies_its_second_factor_first()
    {
        for (int i = 0; i < 1000; i++)
        {
            RigidMotion a = g.Motion(500), b = g.Motion(500);
            Vector3d v = g.Cube(1000);

            Near((a.Rotation * b.Rotation).Apply(v), a.Rotation.Apply(b.Rotation.Apply(v)), 2e-12);
            Near((a * b).Apply(v), a.Apply(b.Apply(v)), 4e-12);
        }
    }

    [Fact]
    public void An_inverse_undoes_and_directions_are_not_moved()
    {
        for (int i = 0; i < 1000; i++)
        {
            RigidMotion a = g.Motion(500);
            Vector3d v = g.Cube(1000), w = g.Cube(1000);

            Near(a.Inverse.Apply(a.Apply(v)), v, 4e-12);
            Near(a.ApplyInverseToDirection(a.ApplyToDirection(v)), v, 4e-12);
            Near(a.ApplyToDirection(v - w), a.Apply(v) - a.Apply(w), 4e-12);
            Near((a * a.Inverse).Apply(v), v, 4e-12);
        }
    }

    [Fact]
    public void A_Cayley_vector_is_the_axis_times_the_tangent_of_half_the_angle()
    {
        for (int i = 0; i < 1000; i++)
        {
            Vector3d axis = g.UnitVector(), v = g.Cube(1000);
            double angle = g.In(-3.1, 3.1);

            Near(Rotation.FromCayley(axis * Math.Tan(angle / 2)).Apply(v), ByMatrix(axis, angle, v), 1e-11);
        }
    }

    [Fact]
    public void A_rotation_vector_comes_back_from_axis_and_angle_down_to_the_smallest_turns()
    {
        for (int i = 0; i < 1000; i++)
        {
            Vector3d axis = g.UnitVector();
            double angle = i % 2 == 0 ? g.In(0, Math.PI) : Math.Pow(10, g.In(-150, 0));

            Vector3d back = Rotation.About(axis, angle).ToRotationVector();

            (back - (axis * angle)).Length.ShouldBeLessThan(3e-15 * Math.Max(angle, 1e-300) * (angle > 3 ? 10 : 1));
        }

        Rotation.Identity.ToRotationVector().ShouldBe(Vector3d.Zero);
    }

    [Fact]
    public void The_longer_way_round_is_read_as_the_shorter_one()
    {
        Near(Rotation.About(Vector3d.UnitX, 1.5 * Math.PI).ToRotationVector(), new(-Math.PI / 2, 0, 0), 1e-15);
        Near(new Rotation(-1, 0, 0, 0).ToRotationVector(), Vector3d.Zero, 1e-15);
    }

    [Fact]
    public void A_thousand_small_turns_keep_the_length_of_one()
    {
        Rotation sum = Rotation.Identity;
        for (int i = 0; i < 1000; i++) sum *= Rotation.About(new(1, 2, 3), Math.PI / 500);

        Near(sum.Apply(new(100, 0, 0)), new(100, 0, 0), 1e-10);
        Math.Abs((sum.W * sum.W) + (sum.X * sum.X) + (sum.Y * sum.Y) + (sum.Z * sum.Z) - 1).ShouldBeLessThan(1e-15);
    }

    [Fact]
    public void A_motion_can_be_written_out()
    {
        // It once ended in a stack overflow: the text of a record holds its properties, the inverse among them.
        new RigidMotion(Rotation.Identity, new(1.5, -2, 0)).ToString().ShouldBe("Rotation (w 1, x 0, y 0, z 0) then shift (1.5, -2, 0)");
        new Vector3d(1, 2, 3).ToString().ShouldContain("X = 1");
    }

    [Fact]
    public void A_perpendicular_is_square_and_of_length_one_for_every_vector()
    {
        for (int i = 0; i < 1000; i++)
        {
            Vector3d v = i switch { 0 => Vector3d.UnitX, 1 => Vector3d.UnitY, 2 => -Vector3d.UnitZ, _ => g.UnitVector() * Math.Pow(10, g.In(-6, 6)) };

            Vector3d p = v.AnyPerpendicular();

            p.Length.ShouldBe(1, 1e-15);
            Vector3d.Dot(p, v.NormalizedOr(Vector3d.Zero)).ShouldBe(0, 1e-15);
        }

        Vector3d.Zero.AnyPerpendicular().ShouldBe(Vector3d.UnitX);
    }

    private static Vector3d ByMatrix(Vector3d u, double angle, Vector3d v)
    {
        double c = Math.Cos(angle), s = Math.Sin(angle), k = 1 - c;
        return new Vector3d(
            ((c + (k * u.X * u.X)) * v.X) + (((k * u.X * u.Y) - (s * u.Z)) * v.Y) + (((k * u.X * u.Z) + (s * u.Y)) * v.Z),
            (((k * u.X * u.Y) + (s * u.Z)) * v.X) + ((c + (k * u.Y * u.Y)) * v.Y) + (((k * u.Y * u.Z) - (s * u.X)) * v.Z),
            (((k * u.X * u.Z) - (s * u.Y)) * v.X) + (((k * u.Y * u.Z) + (s * u.X)) * v.Y) + ((c + (k * u.Z * u.Z)) * v.Z));
    }

    private static void Near(Vector3d actual, Vector3d expected, double tolerance) => (actual - expected).Length.ShouldBeLessThan(tolerance);
}
