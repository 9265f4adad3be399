using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests;

/// <summary>Own sine, cosine and arctangent against the system's, whose error is under one unit in the last place.</summary>
public sealed class TrigonometryTests
{
    // What the comment in Trigonometry claims.
    private const double Claimed = 4e-16;
    private const double ClaimedInverse = 1e-15;

    private readonly SplitMix64 g = new(71);

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(1000)]
    public void Sine_and_cosine_keep_the_claimed_error(double range)
    {
        for (int i = 0; i < 100_000; i++)
        {
            double angle = g.In(-range, range);
            (double sin, double cos) = Trigonometry.SinCos(angle);

            if (Math.Abs(sin - Math.Sin(angle)) > Claimed) sin.ShouldBe(Math.Sin(angle), Claimed, $"sine of {angle:R}");
            if (Math.Abs(cos - Math.Cos(angle)) > Claimed) cos.ShouldBe(Math.Cos(angle), Claimed, $"cosine of {angle:R}");
        }
    }

    [Fact]
    public void Sine_and_cosine_keep_the_claimed_error_beside_every_quarter_turn()
    {
        for (int quarter = -600; quarter <= 600; quarter++)
            for (int k = -3; k <= 3; k++)
            {
                double angle = quarter * (Math.PI / 2) + (k * 1e-9);
                (double sin, double cos) = Trigonometry.SinCos(angle);

                sin.ShouldBe(Math.Sin(angle), Claimed);
                cos.ShouldBe(Math.Cos(angle), Claimed);
            }
    }

    [Fact]
    public void The_arctangent_keeps_the_claimed_error_in_all_quadrants_and_for_all_sizes()
    {
        for (int i = 0; i < 100_000; i++)
        {
            double y = g.In(-1, 1) * Math.Pow(10, g.In(-8, 8)), x = g.In(-1, 1) * Math.Pow(10, g.In(-8, 8));
            double angle = Trigonometry.Atan2(y, x), expected = Math.Atan2(y, x);

            if (Math.Abs(angle - expected) > ClaimedInverse) angle.ShouldBe(expected, ClaimedInverse, $"angle of ({x:R}, {y:R})");
        }
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(1, 0, Math.PI / 2)]
    [InlineData(-1, 0, -Math.PI / 2)]
    [InlineData(0, -1, Math.PI)]
    [InlineData(1, 1, Math.PI / 4)]
    [InlineData(-1, -1, -3 * Math.PI / 4)]
    public void Angles_on_the_axes_and_diagonals_are_exact(double y, double x, double expected) =>
        Trigonometry.Atan2(y, x).ShouldBe(expected, 2.3e-16);

    [Fact]
    public void The_arcsine_keeps_the_claimed_error_and_holds_its_argument()
    {
        for (int i = 0; i < 100_000; i++)
        {
            double s = i % 2 == 0 ? g.In(-1, 1) : 1 - Math.Pow(10, g.In(-16, 0));
            double angle = Trigonometry.Asin(s), expected = Math.Asin(s);

            if (Math.Abs(angle - expected) > ClaimedInverse) angle.ShouldBe(expected, ClaimedInverse, $"arcsine of {s:R}");
        }

        Trigonometry.Asin(1.0000001).ShouldBe(Math.PI / 2);
        Trigonometry.Asin(-2).ShouldBe(-Math.PI / 2);
    }

    [Fact]
    public void Sine_and_angle_go_round()
    {
        for (int i = 0; i < 10_000; i++)
        {
            double angle = g.In(-Math.PI, Math.PI);
            (double sin, double cos) = Trigonometry.SinCos(angle);

            Trigonometry.Atan2(sin, cos).ShouldBe(angle, 1e-15);
            ((sin * sin) + (cos * cos)).ShouldBe(1, 5e-16);
        }
    }
}
