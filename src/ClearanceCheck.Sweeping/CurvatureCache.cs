using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Curvature bounds of one set of points for the regions asked for so far in one search.</summary>
internal sealed class CurvatureCache(IMovingSystem system, int frameBody, int body, Vector3d[] anchors)
{
    private readonly Dictionary<DyadicCell, (CurvatureBasis Basis, Curvature[] Bounds)> known = [];

    /// <summary>Bounds over a cell: what holds over all regions that cover it, each bounded once for all cells.</summary>
    public CurvatureBasis Get(in DyadicCell cell, Span<Curvature> bounds)
    {
        CurvatureBasis basis = CurvatureBasis.Enclosed;
        bool started = false;
        foreach (DyadicCell region in system.CurvatureRegions(cell))
        {
            (CurvatureBasis own, Curvature[] over) = Region(region, bounds.Length);
            // A block may resist as a whole where the part of it that the cell needs does not.
            if (own == CurvatureBasis.Unknown) return Copy(Region(cell, bounds.Length), bounds);
            if (own > basis) basis = own;
            for (int k = 0; k < bounds.Length; k++) bounds[k] = started ? Curvature.Hull(bounds[k], over[k]) : over[k];
            started = true;
        }

        return basis;
    }

    private static CurvatureBasis Copy((CurvatureBasis Basis, Curvature[] Bounds) entry, Span<Curvature> bounds)
    {
        entry.Bounds.CopyTo(bounds);
        return entry.Basis;
    }

    private (CurvatureBasis Basis, Curvature[] Bounds) Region(in DyadicCell region, int coordinates)
    {
        if (known.TryGetValue(region, out (CurvatureBasis Basis, Curvature[] Bounds) entry)) return entry;
        entry.Bounds = new Curvature[coordinates];
        entry.Basis = system.Curvatures(region, frameBody, body, anchors, entry.Bounds);
        known.Add(region, entry);
        return entry;
    }
}
