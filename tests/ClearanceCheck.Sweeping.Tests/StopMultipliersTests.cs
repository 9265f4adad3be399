namespace ClearanceCheck.Sweeping.Tests;

public sealed class StopMultipliersTests
{
    [Fact]
    public void No_multipliers_of_a_grid_raise_the_bound_higher()
    {
        var random = new SplitMix64(12);
        var program = new StopMultipliers(8, 2);
        int used = 0;
        for (int run = 0; run < 300; run++)
        {
            double[] values = Draw(random, 8), estimates = Draw(random, 16), found = new double[2];

            bool any = program.Find(values, estimates, found);

            used += any ? 1 : 0;
            found.Min().ShouldBeGreaterThanOrEqualTo(0);
            double reached = Least(values, estimates, found[0], found[1]);
            for (int i = 0; i <= 40; i++)
                for (int j = 0; j <= 40; j++)
                    Least(values, estimates, 0.1 * i, 0.1 * j).ShouldBeLessThanOrEqualTo(reached + 1e-9);
        }

        used.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void Stops_that_let_every_corner_through_get_no_multiplier()
    {
        double[] found = [7, 7];

        new StopMultipliers(2, 2).Find([1, 2], [0, 3, 5, 1], found).ShouldBeFalse();

        found.ShouldBe([0, 0]);
    }

    private static double[] Draw(SplitMix64 random, int count) => [.. Enumerable.Range(0, count).Select(_ => random.In(-10, 10))];

    private static double Least(double[] values, double[] estimates, double first, double second) =>
        Enumerable.Range(0, values.Length).Min(c => values[c] - (first * estimates[c]) - (second * estimates[values.Length + c]));
}
