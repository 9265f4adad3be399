using ClearanceCheck.Reporting.Drawings;
using CsCheck;

namespace ClearanceCheck.Reporting.Tests.Drawings;

public sealed class ConvexHullTests
{
    private static readonly Gen<PagePoint[]> Clouds = Gen.Select(Gen.Int[-20, 20], Gen.Int[-20, 20]).Select((x, y) => new PagePoint(x, y)).Array[1, 24];

    [Fact]
    public void The_hull_of_a_square_with_points_in_it_and_on_its_sides_is_the_square() =>
        ConvexHull.Of([new(10, 10), new(0, 0), new(5, 5), new(10, 0), new(5, 0), new(0, 10), new(0, 0), new(10, 4)])
            .ShouldBe([new(0, 0), new(10, 0), new(10, 10), new(0, 10)]);

    [Fact]
    public void Points_on_one_line_leave_its_two_ends_and_points_that_fall_together_leave_one()
    {
        ConvexHull.Of([new(1, 1), new(3, 3), new(2, 2)]).ShouldBe([new(1, 1), new(3, 3)]);
        ConvexHull.Of([new(2, 2), new(2, 2)]).ShouldBe([new(2, 2)]);
        ConvexHull.Of([]).ShouldBeEmpty();
    }

    [Fact]
    public void A_hull_holds_every_point_turns_one_way_and_has_no_corner_that_is_not_among_them() => Clouds.Sample(cloud =>
    {
        PagePoint[] hull = ConvexHull.Of(cloud);
        if (hull.Length < 3) return hull.All(cloud.Contains);
        return hull.All(cloud.Contains) && Enumerable.Range(0, hull.Length).All(i =>
        {
            (PagePoint a, PagePoint b) = (hull[i], hull[(i + 1) % hull.Length]);
            PagePoint c = hull[(i + 2) % hull.Length];
            return PagePoint.Dot((b - a).Turned, c - b) > 0 && cloud.All(p => PagePoint.Dot((b - a).Turned, p - a) >= 0);
        });
    });
}
