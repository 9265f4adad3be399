using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>The triangle sets that another program was measured on, drawn again, against the sums it printed (80-bit arithmetic).</summary>
public sealed class PeerTriangleTests
{
    private const int Count = 4096;

    [Fact] // sum_of_gaps of seed 202 in the peers' scene-pairs.json, nine decimals.
    public void Pairs_of_triangles_sum_up_to_the_printed_figure() =>
        Sum(202, Triangle).ShouldBe(880361.409104377, 1e-8);

    [Fact] // sum_of_gaps of seed 303 in the peers' scene-pairs.json, nine decimals.
    public void Triangles_and_capsules_sum_up_to_the_printed_figure() =>
        Sum(303, Capsule).ShouldBe(877178.827497755, 1e-8);

    private static double Sum(ulong seed, Func<SplitMix64, Hull> second)
    {
        var g = new SplitMix64(seed);
        double sum = 0;
        for (int i = 0; i < Count;)
        {
            Hull a = Triangle(g), b = second(g);
            double gap = Hull.Measure(a, b).Gap;
            if (!(gap > 0.5)) continue;
            sum += gap;
            i++;
        }

        return sum;
    }

    private static Hull Triangle(SplitMix64 g)
    {
        Vector3d a = g.Cube(200), b = g.Cube(80), c = g.Cube(80);
        return new([a, a + b, a + c], PieceKind.Simplex, 0);
    }

    private static Hull Capsule(SplitMix64 g)
    {
        Vector3d p = g.Cube(200), d = g.Cube(80);
        return new([p, p + d], PieceKind.Simplex, g.In(2, 25));
    }
}
