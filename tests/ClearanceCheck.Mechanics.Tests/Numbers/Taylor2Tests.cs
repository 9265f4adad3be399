using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Tests.Numbers;

public sealed class Taylor2Tests
{
    private readonly Random random = new(81);

    [Fact]
    public void A_product_a_quotient_and_a_square_have_the_derivatives_of_their_closed_forms()
    {
        for (int i = 0; i < 1000; i++)
        {
            double x = (random.NextDouble() * 6) - 3;
            Taylor2<Real> t = Variable(x), five = Taylor2<Real>.From(5), three = Taylor2<Real>.From(3);

            // x^2 (x + 3) = x^3 + 3 x^2
            Near(Taylor2<Real>.Square(t) * (t + three), (x * x * x) + (3 * x * x), (3 * x * x) + (6 * x), (6 * x) + 6);
            // (x^2 + 3) / (x - 5): f' = (x^2 - 10 x - 3) / (x - 5)^2, f'' = 56 / (x - 5)^3
            double d = x - 5;
            Near(((t * t) + three) / (t - five), ((x * x) + 3) / d, ((x * x) - (10 * x) - 3) / (d * d), 56 / (d * d * d));
            // (5 - 3 x)^2
            Near(Taylor2<Real>.Square(five - (three * t)), (5 - (3 * x)) * (5 - (3 * x)), -6 * (5 - (3 * x)), 18);
            Near(-(t / three), -x / 3, -1.0 / 3, 0);
            // f = sqrt(x^2 + 3): f' = x / f, f'' = 3 / f^3
            double root = Math.Sqrt((x * x) + 3);
            Near(Taylor2<Real>.Sqrt(Taylor2<Real>.Square(t) + three), root, x / root, 3 / (root * root * root));
            var slope = Tangent<Real>.Sqrt(Tangent<Real>.Square(new(new Real(x), new Real(1))) + Tangent<Real>.From(3));
            slope.First.Value.ShouldBe(x / root, 1e-11);
        }
    }

    [Fact]
    public void Turning_by_a_Cayley_vector_has_the_finite_differences_of_the_quaternion()
    {
        for (int i = 0; i < 300; i++)
        {
            Vector3d c = Draw(0.8), slope = Draw(1), v = Draw(100);
            var along = new Vector3<Taylor2<Real>>(Line(c.X, slope.X), Line(c.Y, slope.Y), Line(c.Z, slope.Z));
            Vector3<Taylor2<Real>> turned = Vector3<Taylor2<Real>>.TurnByCayley(along, Vector3<Taylor2<Real>>.From(v));
            const double H = 1e-4;
            Vector3d before = At(-H), here = At(0), after = At(H);

            (Value(turned) - here).Length.ShouldBeLessThan(1e-12);
            (First(turned) - ((after - before) / (2 * H))).Length.ShouldBeLessThan(1e-4);
            (Second(turned) - ((after + before - (2 * here)) / (H * H))).Length.ShouldBeLessThan(1e-2);

            Vector3d At(double h) => Rotation.FromCayley(c + (slope * h)).Apply(v);
        }
    }

    [Fact]
    public void With_intervals_inside_every_part_encloses_those_of_every_point()
    {
        for (int i = 0; i < 2000; i++)
        {
            double low = (random.NextDouble() * 4) - 2, width = random.NextDouble() * 0.5, x = low + (width * random.NextDouble());
            var box = new Taylor2<Interval>(new(low, low + width), Interval.From(1), Interval.Zero);

            Taylor2<Interval> over = Formula(box);
            Taylor2<Real> at = Formula(Variable(x));

            over.Value.Contains(at.Value.Value).ShouldBeTrue();
            over.First.Contains(at.First.Value).ShouldBeTrue();
            over.Second.Contains(at.Second.Value).ShouldBeTrue();
        }
    }

    private static T Formula<T>(T x)
        where T : unmanaged, IReal<T> =>
        ((T.Square(x) * x) - (x * T.From(2))) / T.Sqrt(T.Square(x - T.From(1)) + T.From(3));

    private Vector3d Draw(double half) => new(Number(half), Number(half), Number(half));

    private double Number(double half) => ((random.NextDouble() * 2) - 1) * half;

    private static Taylor2<Real> Variable(double x) => Line(x, 1);

    private static Taylor2<Real> Line(double x, double slope) => new(new Real(x), new Real(slope), default);

    private static Vector3d Value(Vector3<Taylor2<Real>> v) => new(v.X.Value.Value, v.Y.Value.Value, v.Z.Value.Value);

    private static Vector3d First(Vector3<Taylor2<Real>> v) => new(v.X.First.Value, v.Y.First.Value, v.Z.First.Value);

    private static Vector3d Second(Vector3<Taylor2<Real>> v) => new(v.X.Second.Value, v.Y.Second.Value, v.Z.Second.Value);

    private static void Near(Taylor2<Real> actual, double value, double first, double second)
    {
        actual.Value.Value.ShouldBe(value, 1e-11);
        actual.First.Value.ShouldBe(first, 1e-11);
        actual.Second.Value.ShouldBe(second, 1e-11);
    }
}
