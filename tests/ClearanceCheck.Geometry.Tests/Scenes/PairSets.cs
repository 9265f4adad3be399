using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>
/// The pair sets that other programs were measured on: the same draws in the same order, so that sums and single gaps printed by an
/// independent program (80-bit arithmetic, every feature pair) can be compared.
/// </summary>
internal static class PairSets
{
    private const int Count = 4096;

    public static IReadOnlyList<CapsulePair> Capsules { get; } = DrawCapsules();

    public static IReadOnlyList<CapsulePair> Degenerate { get; } = DrawDegenerate();

    public static IReadOnlyList<DiscPair> Discs { get; } = DrawDiscs();

    private static Capsule DrawCapsule(SplitMix64 g)
    {
        Vector3d p = g.Cube(200), d = g.Cube(80);
        return new Capsule(p, p + d, g.In(2, 25));
    }

    private static List<CapsulePair> DrawCapsules()
    {
        var g = new SplitMix64(101);
        var pairs = new List<CapsulePair>();
        while (pairs.Count < Count)
        {
            Capsule a = DrawCapsule(g), b = DrawCapsule(g);
            double gap = SlowGap.Capsules(a, b);
            if (gap > 0.5) pairs.Add(new CapsulePair(a, b, gap, -1));
        }

        return pairs;
    }

    private static List<CapsulePair> DrawDegenerate()
    {
        var g = new SplitMix64(505);
        var pairs = new List<CapsulePair>();
        for (int i = 0; i < Count; i++)
        {
            int kind = i % 8;
            Vector3d p = g.Cube(200), u = g.UnitVector(), w = g.UnitVector();
            Vector3d n = Vector3d.Cross(u, w);
            n *= 1 / n.Length;
            double length = g.In(20, 200), off = g.In(60, 200), firstRadius = g.In(2, 25), secondRadius = g.In(2, 25), k = g.Unit();
            (Capsule a, Capsule b) = Degenerates(kind, p, u, w, n, length, off, firstRadius, secondRadius, k);
            double gap = SlowGap.Capsules(a, b);
            if (gap < 1e-10)
            {
                b = b with { Radius = b.Radius * 0.1 };
                gap = SlowGap.Capsules(a, b);
            }

            if (gap >= 1e-10) pairs.Add(new CapsulePair(a, b, gap, kind));
        }

        return pairs;
    }

    private static (Capsule First, Capsule Second) Degenerates(
        int kind, Vector3d p, Vector3d u, Vector3d w, Vector3d n, double length, double off, double firstRadius, double secondRadius, double k)
    {
        Capsule a = new(p, p + (u * length), firstRadius), ball = new(p, p, firstRadius);
        Vector3d s = p + (n * off);
        switch (kind)
        {
            case 0: // parallel
                return (a, new(s + (u * (length * (k - 0.5))), s + (u * (length * (k + 0.5))), secondRadius));
            case 1: // nearly parallel
                return (a, new(s, s + ((u + (w * Math.Pow(10, -12 + (9 * k)))) * length), secondRadius));
            case 2: // collinear
                return (a, new(p + (u * (length + off)), p + (u * (length + off + (length * k))), secondRadius));
            case 3: // point and segment
                return (ball, new(s, s + (w * length), secondRadius));
            case 4: // two points
                return (ball, new(s, s, secondRadius));
            case 5: // nearly touching, crossed
                Vector3d c = p + (u * (length * 0.5)) + (n * (firstRadius + secondRadius + Math.Pow(10, -9 + (7 * k))));
                Vector3d x = Vector3d.Cross(n, u);
                return (a, new(c - (x * 40), c + (x * 40), secondRadius));
            case 6: // a million mm from the origin
                Vector3d far = new(1e6, -1e6, 1e6);
                a = a with { From = a.From + far, To = a.To + far };
                s = a.From + (n * off);
                return (a, new(s, s + (w * length), secondRadius));
            default: // almost no length
                return (a with { To = p + (u * 1e-7) }, new(s, s + (w * length), secondRadius));
        }
    }

    private static List<DiscPair> DrawDiscs()
    {
        var g = new SplitMix64(404);
        var pairs = new List<DiscPair>();
        while (pairs.Count < Count)
        {
            Vector3d center = g.Cube(100), axis = g.UnitVector();
            double radius = g.In(300, 500), halfWidth = g.In(100, 180);
            Vector3d middle = g.Cube(700), half = g.Cube(150);
            var capsule = new Capsule(middle - half, middle + half, g.In(2, 25));
            double gap = SlowGap.DiscCapsule(center, axis, radius, halfWidth, capsule);
            if (gap > 0.5) pairs.Add(new DiscPair(new Disc(center, axis, radius, halfWidth), capsule, gap));
        }

        return pairs;
    }
}
