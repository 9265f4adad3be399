using System.Collections.Immutable;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Vehicles.Tests.Tires;

public sealed class TireSectionTests
{
    public static TheoryData<double, double, double> Tires => new()
    {
        { 431.3, 305.3, 203.2 }, // 285/75R16 as swept
        { 460.0, 350.0, 215.9 }, // 35x12.50R17 as swept
        { 340.0, 330.0, 254.0 }, // a low one
    };

    // Independent of the product's tangents: points of a circle's arc through bulge and tread edge, for treads from 0.75 to 0.85 of the width.
    [Theory]
    [MemberData(nameof(Tires))]
    public void The_polygons_contain_a_tire_with_rounded_sidewalls(double outer, double width, double rim)
    {
        ImmutableArray<ImmutableArray<TireCorner>> polygons = TireSection.Polygons(outer, width, rim);
        double half = width / 2, a = (outer - rim) / 2, middle = rim + a;
        foreach (double share in new[] { 0.75, 0.80, 0.85 })
        {
            double b = half * (1 - share);
            for (int i = 0; i <= 100; i++)
            {
                double up = a * i / 100, circle = ((a * a) + (b * b)) / (2 * b);
                double along = half - circle + Math.Sqrt((circle * circle) - (up * up));
                foreach (double side in new[] { -1.0, 0, 0.5, 1.0 })
                    Contains(polygons, middle + up, side * along).ShouldBeTrue($"share {share}, up {up}, side {side}");
                foreach (double side in new[] { -1.0, 0, 1.0 })
                    Contains(polygons, middle - up, side * half).ShouldBeTrue($"below the middle by {up}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Tires))]
    public void The_polygons_are_convex_and_reach_no_farther_than_the_tire(double outer, double width, double rim)
    {
        ImmutableArray<ImmutableArray<TireCorner>> polygons = TireSection.Polygons(outer, width, rim);

        foreach (ImmutableArray<TireCorner> polygon in polygons)
        {
            polygon.Length.ShouldBeLessThanOrEqualTo(4);
            for (int i = 0; i < polygon.Length; i++) Turn(polygon[i], polygon[(i + 1) % polygon.Length], polygon[(i + 2) % polygon.Length]).ShouldBeLessThan(0);
        }

        TireCorner[] corners = [.. polygons.SelectMany(p => p)];
        corners.Max(c => c.RadiusMm).ShouldBe(outer);
        corners.Min(c => c.RadiusMm).ShouldBe(rim, 1e-9);
        corners.Max(c => c.AlongMm).ShouldBe(width / 2, 1e-9);
        corners.Min(c => c.AlongMm).ShouldBe(-width / 2, 1e-9);
    }

    // By hand: a = 100, b = 0.075 x 300 = 22.5, tangents meet 200 + 100 + (10000 + 506.25) / 200 = 352.53125 from the axis.
    [Fact]
    public void The_tread_is_narrower_than_the_bulge()
    {
        ImmutableArray<ImmutableArray<TireCorner>> polygons = TireSection.Polygons(400, 300, 200);

        polygons.Length.ShouldBe(2);
        polygons[1].ShouldBe([new(352.53125, -150), new(352.53125, 150), new(400, 127.5), new(400, -127.5)]);
        Contains(polygons, 399.9, 149).ShouldBeFalse();
    }

    [Fact]
    public void A_tire_flatter_than_any_keeps_its_full_width() =>
        TireSection.Polygons(220, 300, 200).ShouldHaveSingleItem().ShouldBe([new(200, -150), new(200, 150), new(220, 150), new(220, -150)]);

    [Theory]
    [InlineData(200, 300, 200)]
    [InlineData(150, 300, 200)]
    [InlineData(400, 0, 200)]
    [InlineData(400, 300, -1)]
    [InlineData(double.NaN, 300, 200)]
    [InlineData(400, double.PositiveInfinity, 200)]
    public void Sizes_of_no_tire_are_refused(double outer, double width, double rim) =>
        Should.Throw<ArgumentOutOfRangeException>(() => TireSection.Polygons(outer, width, rim));

    private static bool Contains(ImmutableArray<ImmutableArray<TireCorner>> polygons, double radius, double along)
    {
        var point = new TireCorner(radius, along);
        return polygons.Any(p => Enumerable.Range(0, p.Length).All(i => Turn(p[i], p[(i + 1) % p.Length], point) <= 1e-6));
    }

    private static double Turn(TireCorner a, TireCorner b, TireCorner c) =>
        ((b.RadiusMm - a.RadiusMm) * (c.AlongMm - a.AlongMm)) - ((b.AlongMm - a.AlongMm) * (c.RadiusMm - a.RadiusMm));
}
