using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>The solid of a part for given parameters.</summary>
public static class PartSolids
{
    public static CapsuleChain Chain(PartForm.Chain form, ReadOnlySpan<double> parameters)
    {
        var points = new Vector3d[form.Path.Length];
        for (int i = 0; i < points.Length; i++) points[i] = form.Path[i].At(parameters);
        return new CapsuleChain(points, form.OutsideDiameter.At(parameters) / 2);
    }

    /// <summary>What is left of a chain outside balls around its joined points: several chains, or none.</summary>
    public static ImmutableArray<CapsuleChain> Outside(CapsuleChain chain, ImmutableArray<Vector3d> centres, double radiusMm)
    {
        var left = ImmutableArray.CreateBuilder<CapsuleChain>();
        var run = new List<Vector3d>();
        for (int i = 0; i + 1 < chain.Points.Length; i++)
        {
            foreach ((double from, double to) in OutsideParts(chain.Points[i], chain.Points[i + 1], centres, radiusMm))
            {
                if (run.Count == 0 || from > 0)
                {
                    Flush();
                    run.Add(Vector3d.Lerp(chain.Points[i], chain.Points[i + 1], from));
                }

                run.Add(Vector3d.Lerp(chain.Points[i], chain.Points[i + 1], to));
                if (to < 1) Flush();
            }
        }

        Flush();
        return left.ToImmutable();

        void Flush()
        {
            if (run.Count > 1) left.Add(new CapsuleChain(run, chain.RadiusMm));
            run.Clear();
        }
    }

    // The parts of a segment outside all balls, as parameters.
    private static List<(double From, double To)> OutsideParts(Vector3d a, Vector3d b, ImmutableArray<Vector3d> centres, double radiusMm)
    {
        var open = new List<(double From, double To)> { (0, 1) };
        Vector3d d = b - a;
        double dd = d.LengthSquared;
        foreach (Vector3d centre in centres)
        {
            Vector3d w = a - centre;
            double half = Vector3d.Dot(w, d), c = w.LengthSquared - (radiusMm * radiusMm), root = (half * half) - (dd * c);
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
