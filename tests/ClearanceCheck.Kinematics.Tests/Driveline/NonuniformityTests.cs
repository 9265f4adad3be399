using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Driveline;

public sealed class NonuniformityTests
{
    private const double Degree = Math.PI / 180;

    /// <summary>Two-joint shaft: rpm, angle of joint 1, largest angle of joint 2, degrees (an engineering site's page on vehicle driveline design, after SAE AE-7; looked up). The table is rounded up.</summary>
    public static TheoryData<int, double[]> Published { get; } = new()
    {
        { 1500, [7.3, 7.4, 7.6, 7.9, 8.3, 8.9, 9.5, 10.1, 10.8, 11.6] },
        { 1600, [6.9, 6.9, 7.1, 7.5, 7.9, 8.5, 9.1, 9.8, 10.5] },
        { 1700, [6.5, 6.5, 6.8, 7.1, 7.6, 8.2, 8.8] },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public void Two_joints_that_are_as_uneven_as_400_rad_s2_allow_are_those_of_the_published_table(int rpm, double[] second)
    {
        // Guideline of 400 rad/s^2 for trucks; a of one small joint is w^2 b^2.
        double allowed = Math.Sqrt(400) / (2 * Math.PI * rpm / 60);
        for (int first = 0; first < second.Length; first++)
        {
            double low = first * Degree, high = 20 * Degree;
            for (int k = 0; k < 60; k++)
            {
                double middle = (low + high) / 2;
                if (Nonuniformity.EquivalentRad(first * Degree, middle, 0) < allowed) low = middle;
                else high = middle;
            }

            (low / Degree).ShouldBe(second[first], 0.07, $"{rpm} rpm, {first} degrees");
        }
    }

    // Angle and speed: a PTO owner's manual (bulletin HY25-1890-M1/US, p. 5; looked up) for the first two; the accelerations were
    // worked out for the exact formula by other hands.
    [Theory]
    [InlineData(3000, 5.8333333, 1024.8, 1023.0)]
    [InlineData(1500, 11.5, 1001.2, 994.0)]
    [InlineData(1000, 30, 3230, 3006)]
    public void The_peak_acceleration_of_one_joint_is_the_exact_one(double rpm, double degrees, double exact, double small)
    {
        Nonuniformity.PeakAcceleration(degrees * Degree, rpm).ShouldBe(exact, exact * 2e-4);
        // The small-angle rule 3.3405e-6 n^2 b^2 (the constant is (2 pi / 60)^2 (pi / 180)^2).
        (3.3405e-6 * rpm * rpm * degrees * degrees).ShouldBe(small, small * 2e-4);
    }

    [Fact]
    public void The_peak_acceleration_is_the_largest_of_a_whole_turn()
    {
        foreach (double degrees in new[] { 0.5, 7, 25, 44 })
        {
            double s = Math.Sin(degrees * Degree), c = Math.Cos(degrees * Degree), largest = 0;
            for (double f = 0; f < Math.PI; f += 1e-5) largest = Math.Max(largest, c * s * s * Math.Sin(2 * f) / Math.Pow(1 - (s * s * Math.Cos(f) * Math.Cos(f)), 2));

            Nonuniformity.PeakAcceleration(degrees * Degree, 60 / (2 * Math.PI)).ShouldBe(largest, largest * 1e-8);
        }
    }

    [Fact]
    public void Speed_swings_between_the_cosine_and_its_inverse()
    {
        // A driveline maker's technical section 2.2 has the torque's limits M cos b and M / cos b (looked up): 30 degrees give 0.8660 and 1.1547.
        (double least, double most) = Nonuniformity.SpeedRatio(30 * Degree);

        least.ShouldBe(0.8660, 5e-5);
        most.ShouldBe(1.1547, 5e-5);
        // U = sin b tan b of at most 0.0027 (same maker, section 3; looked up) is 2.977 degrees.
        Nonuniformity.Fluctuation(2.977 * Degree).ShouldBe(0.0027, 1e-6);
        Nonuniformity.Fluctuation(30 * Degree).ShouldBe(most - least, 1e-12);
    }

    [Fact]
    public void Equal_joints_cancel_in_phase_and_add_up_a_quarter_turn_out_of_phase()
    {
        Nonuniformity.EquivalentRad(0.1, 0.1, 0).ShouldBe(0, 1e-9);
        Nonuniformity.EquivalentRad(0.1, 0.1, Math.PI / 2).ShouldBe(0.1 * Math.Sqrt(2), 1e-12);
        Nonuniformity.EquivalentRad(0.05, 0.03, 0).ShouldBe(0.04, 1e-12);
        Nonuniformity.EquivalentRad(0.05, 0.12, Math.PI / 2).ShouldBe(0.13, 1e-12);
    }

    [Theory]
    [InlineData(5, 0, 2, 0, 0)]
    [InlineData(5, 0, 0, 4, 0)]
    [InlineData(4, 3, -2, 5, 0)]
    [InlineData(3, 0, 6, 0, 25)]
    [InlineData(3, 0, 0, 4, 25)]
    [InlineData(3, 0, 0, 4, -25)]
    [InlineData(4, -2, 3, 5, 40)]
    [InlineData(4, -2, 3, 5, -40)]
    [InlineData(5, 1, -5, -1, 10)]
    public void Two_joints_turn_what_they_drive_as_unevenly_as_crosses_followed_by_vectors_do(double side1, double top1, double side2, double top2, double phase)
    {
        Vector3d[] axes = Axes((side1, top1), (side2, top2));
        double[] phases = [phase * Degree];

        double equivalent = Nonuniformity.EquivalentRad([.. axes.Select(a => (Vector3d?)a)], [ShaftJointKind.Single, ShaftJointKind.Single], phases).ShouldNotBeNull();

        // One joint's speed swings by half of b^2 each way.
        (equivalent * equivalent / 2).ShouldBe(CrossesByVectors.Swing(axes, phases), 0.02 * CrossesByVectors.Swing(axes, phases));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(20, -15)]
    [InlineData(-35, 60)]
    public void Three_joints_of_a_two_piece_shaft_do_so_too(double phase1, double phase2)
    {
        Vector3d[] axes = Axes((3, 1), (-2, 2), (4, -3));
        double[] phases = [phase1 * Degree, phase2 * Degree];

        double equivalent = Nonuniformity
            .EquivalentRad([.. axes.Select(a => (Vector3d?)a)], [ShaftJointKind.Single, ShaftJointKind.Single, ShaftJointKind.Single], phases).ShouldNotBeNull();

        (equivalent * equivalent / 2).ShouldBe(CrossesByVectors.Swing(axes, phases), 0.02 * CrossesByVectors.Swing(axes, phases));
    }

    [Fact]
    public void In_one_plane_the_line_of_shafts_says_the_same_as_two_angles()
    {
        Vector3d?[] axes = [.. Axes((5, 0), (-7, 0)).Select(a => (Vector3d?)a)];

        Nonuniformity.EquivalentRad(axes, [ShaftJointKind.Single, ShaftJointKind.Single], [0.3])
            .ShouldNotBeNull().ShouldBe(Nonuniformity.EquivalentRad(5 * Degree, 7 * Degree, 0.3), 1e-12);
    }

    [Fact]
    public void Joints_of_even_turn_add_nothing_and_a_direction_that_only_they_need_may_be_missing()
    {
        Vector3d[] axes = Axes((5, 0), (-7, 0));

        Nonuniformity.EquivalentRad([null, axes[1], axes[2]], [ShaftJointKind.DoubleCardan, ShaftJointKind.Single], [0]).ShouldNotBeNull().ShouldBe(7 * Degree, 1e-12);
        Nonuniformity.EquivalentRad([axes[0], axes[1], null], [ShaftJointKind.Single, ShaftJointKind.ConstantVelocity], [0]).ShouldNotBeNull().ShouldBe(5 * Degree, 1e-12);
        Nonuniformity.EquivalentRad([axes[0], axes[1], null], [ShaftJointKind.Single, ShaftJointKind.Single], [0]).ShouldBeNull();
    }

    [Fact]
    public void What_stands_before_and_behind_an_even_joint_is_taken_to_add_up()
    {
        Vector3d?[] axes = [.. Axes((3, 0), (1, 0), (4, 0)).Select(a => (Vector3d?)a)];

        Nonuniformity.EquivalentRad(axes, [ShaftJointKind.Single, ShaftJointKind.ConstantVelocity, ShaftJointKind.Single], [0, 0]).ShouldNotBeNull().ShouldBe(5 * Degree, 1e-12);
    }

    // Each joint turns the line on by so many degrees up and to the left.
    private static Vector3d[] Axes(params (double Up, double Left)[] bends)
    {
        var axes = new List<Vector3d> { Vector3d.UnitX };
        (double up, double left) = (0, 0);
        foreach ((double u, double l) in bends)
        {
            (up, left) = (up + u, left + l);
            axes.Add(new Vector3d(Math.Cos(up * Degree) * Math.Cos(left * Degree), Math.Cos(up * Degree) * Math.Sin(left * Degree), Math.Sin(up * Degree)));
        }

        return [.. axes];
    }
}
