using System.Numerics;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>The references are only worth as much as the numbers they are computed in.</summary>
public sealed class DoubleDoubleTests
{
    [Fact]
    public void Products_sums_quotients_and_roots_carry_thirty_digits()
    {
        var g = new SplitMix64(1);
        for (int i = 0; i < 2000; i++)
        {
            // Whole numbers of 53 bits: the exact product has 106 and is known from whole-number arithmetic.
            double a = g.Next() >> 11, b = (g.Next() >> 11) + 1;
            DoubleDouble product = new DoubleDouble(a, 0) * b;

            (Whole(product) - ((BigInteger)a * (BigInteger)b)).ShouldBe(BigInteger.Zero);
            Relative(product / b, a).ShouldBeLessThan(1e-30);
            Relative(DoubleDouble.Sqrt(product * product), product).ShouldBeLessThan(1e-30);
            (new DoubleDouble(a, 0) + 1e-17 - a).ToDouble().ShouldBe(1e-17, 1e-30);
        }
    }

    private static BigInteger Whole(DoubleDouble a) => (BigInteger)a.High + (BigInteger)a.Low;

    private static double Relative(DoubleDouble a, DoubleDouble b) => b.High == 0 ? Math.Abs(a.High) : Math.Abs(((a - b) / b).ToDouble());
}
