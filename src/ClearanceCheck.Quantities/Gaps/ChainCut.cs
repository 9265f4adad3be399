using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>What is left of a chain outside balls around places.</summary>
internal static class ChainCut
{
    /// <summary>The stretches outside all balls; the chain itself where none reaches it, null where nothing is left.</summary>
    public static Solid? Outside(CapsuleChain chain, ImmutableArray<JoinedPlace> places)
    {
        var points = ImmutableArray.CreateBuilder<Vector3d>();
        var simplices = ImmutableArray.CreateBuilder<Simplex>();
        bool whole = true;
        for (int i = 0; i + 1 < chain.Points.Length; i++)
        {
            (Vector3d a, Vector3d b) = (chain.Points[i], chain.Points[i + 1]);
            List<(double From, double To)> open = OutsideParts(a, b, places);
            whole &= open is [(0, 1)];
            foreach ((double from, double to) in open)
            {
                simplices.Add(new Simplex(points.Count, points.Count + 1, points.Count + 1, chain.RadiusMm));
                points.Add(Vector3d.Lerp(a, b, from));
                points.Add(Vector3d.Lerp(a, b, to));
            }
        }

        if (whole) return chain;
        return simplices.Count == 0 ? null : new SimplexTree(points.ToImmutable(), simplices.ToImmutable());
    }

    // The parts of a segment outside all balls, as parameters.
    internal static List<(double From, double To)> OutsideParts(Vector3d a, Vector3d b, ImmutableArray<JoinedPlace> places)
    {
        var open = new List<(double From, double To)> { (0, 1) };
        Vector3d d = b - a;
        double dd = d.LengthSquared;
        foreach (JoinedPlace place in places)
        {
            Vector3d w = a - place.At;
            double half = Vector3d.Dot(w, d), c = w.LengthSquared - (place.RadiusMm * place.RadiusMm), root = (half * half) - (dd * c);
            if (dd == 0)
            {
                if (c < 0) open.Clear();
                continue;
            }

            if (root <= 0) continue;
            double enter = (-half - Math.Sqrt(root)) / dd, leave = (-half + Math.Sqrt(root)) / dd;
            open = [.. open.SelectMany(o => new[] { (o.From, To: Math.Min(o.To, enter)), (From: Math.Max(o.From, leave), o.To) }).Where(o => o.Item2 > o.Item1)];
        }

        return open;
    }
}
