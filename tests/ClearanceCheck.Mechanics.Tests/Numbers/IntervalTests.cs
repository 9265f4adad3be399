using ClearanceCheck.Mechanics.Numbers;
using CsCheck;

namespace ClearanceCheck.Mechanics.Tests.Numbers;

/// <summary>Every operation against exact fractions: the true result is never outside.</summary>
public sealed class IntervalTests
{
    private static readonly Gen<double> Numbers = Gen.Select(Gen.Double[-1, 1], Gen.Int[-40, 40], (m, e) => m * Math.Pow(2, e));

    private static readonly Gen<(Interval Interval, double Inside)> Intervals = Gen.Select(
        Numbers, Numbers, Gen.Double[0, 1], (a, b, share) =>
        {
            Interval i = new(Math.Min(a, b), Math.Max(a, b));
            return (i, share < 0.2 ? i.Low : share > 0.8 ? i.High : Math.Clamp(i.Low + (share * i.Width), i.Low, i.High));
        });

    [Fact]
    public void Random_expressions_enclose_their_exact_value() =>
        Gen.Select(Intervals.Array[6], Gen.Int[0, 5].Array[6], Gen.Int[0, 5].Array[6]).Sample(
            (leaves, operations, order) =>
            {
                Interval enclosed = leaves[0].Interval;
                var exact = Rational.From(leaves[0].Inside);
                for (int i = 0; i < operations.Length; i++)
                {
                    (Interval with, double inside) = leaves[order[i]];
                    (enclosed, exact) = Step(operations[i], enclosed, exact, with, Rational.From(inside));
                    if (!exact.IsAtLeast(enclosed.Low) || !exact.IsAtMost(enclosed.High)) return false;
                }

                return true;
            },
            iter: 20_000);

    [Fact]
    public void Subnormal_and_overflowing_results_are_still_enclosed()
    {
        Interval tiny = Interval.From(double.Epsilon), half = Interval.From(0.5), huge = Interval.From(double.MaxValue);

        (tiny * half).High.ShouldBeGreaterThan(0);
        (tiny * half).Low.ShouldBeLessThanOrEqualTo(0);
        Interval.Square(Interval.From(1e-200)).High.ShouldBeGreaterThan(0);
        Interval.Square(Interval.From(1e-200)).Low.ShouldBe(0);
        (huge + huge).High.ShouldBe(double.PositiveInfinity);
        (huge + huge).Low.ShouldBeLessThanOrEqualTo(double.MaxValue);
        Interval.Square(huge).Low.ShouldBe(double.MaxValue);
        Interval.Sqrt(new(double.PositiveInfinity, double.PositiveInfinity)).Low.ShouldBe(double.MaxValue);
        (Interval.From(double.MinValue) - huge).High.ShouldBeInRange(double.MinValue, 0);
    }

    [Fact]
    public void A_square_is_never_negative_and_never_wider_than_the_product() =>
        Intervals.Sample(x =>
        {
            Interval square = Interval.Square(x.Interval), product = x.Interval * x.Interval;
            return square.Low >= 0 && square.Low >= product.Low && square.High <= Math.Max(product.High, double.Epsilon);
        });

    [Fact]
    public void A_square_root_encloses_the_exact_one_of_every_number_inside() =>
        Intervals.Sample(x =>
        {
            double inside = Math.Abs(x.Inside), other = Math.Abs(x.Interval.High);
            Interval root = Interval.Sqrt(new(Math.Min(inside, other), Math.Max(inside, other)));
            Rational low = Rational.From(root.Low), high = Rational.From(root.High);
            return (low * low).IsAtMost(inside) && (high * high).IsAtLeast(inside) && (low * low).IsAtMost(other) && (high * high).IsAtLeast(other);
        });

    [Theory]
    [InlineData(-1e-300, 1)]
    [InlineData(-2, -1)]
    [InlineData(double.NaN, 1)]
    [InlineData(0, double.NaN)]
    public void The_square_root_of_an_interval_that_reaches_below_zero_says_nothing(double low, double high) =>
        Interval.Sqrt(new(low, high)).ShouldBe(Interval.Everything);

    [Fact]
    public void The_square_of_an_interval_about_zero_starts_at_zero_where_the_product_does_not()
    {
        Interval x = new(-3, 2);

        Interval.Square(x).Low.ShouldBe(0);
        Interval.Square(x).High.ShouldBe(9, 1e-14);
        (x * x).Low.ShouldBe(-6, 1e-14);
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 1)]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(double.NegativeInfinity, double.PositiveInfinity)]
    public void Division_by_an_interval_that_holds_zero_says_nothing(double low, double high)
    {
        Interval quotient = new Interval(2, 3) / new Interval(low, high);

        quotient.ShouldBe(Interval.Everything);
        quotient.IsFinite.ShouldBeFalse();
    }

    [Fact]
    public void What_is_unknown_stays_unknown()
    {
        Interval nothing = Interval.Everything - Interval.Everything;

        nothing.ShouldBe(Interval.Everything);
        (Interval.From(double.NaN) + Interval.From(1)).ShouldBe(Interval.Everything);
        (Interval.Everything / Interval.Everything).ShouldBe(Interval.Everything);
        Interval.Everything.IsInside(Interval.Everything).ShouldBeFalse();
    }

    [Fact]
    public void An_interval_is_inside_another_only_when_it_touches_neither_end()
    {
        new Interval(1, 2).IsInside(new Interval(0, 3)).ShouldBeTrue();
        new Interval(0, 2).IsInside(new Interval(0, 3)).ShouldBeFalse();
        new Interval(1, 3).IsInside(new Interval(0, 3)).ShouldBeFalse();
        Interval.From(double.NaN).IsInside(new Interval(0, 3)).ShouldBeFalse();
    }

    private static (Interval Interval, Rational Exact) Step(int operation, Interval a, Rational x, Interval b, Rational y) => operation switch
    {
        0 => (a + b, x + y),
        1 => (a - b, x - y),
        2 => (a * b, x * y),
        3 => y.Top.IsZero ? (a, x) : (a / b, x / y),
        4 => (Interval.Square(a), x * x),
        _ => (-a, -x),
    };
}
