using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Curvature bounds of one set of points for the regions asked for so far in one search.</summary>
internal sealed class CurvatureCache(IMovingSystem system, int frameBody, int body, Vector3d[] anchors)
{
    private readonly Dictionary<DyadicCell, (CurvatureBasis Basis, Curvature[] Bounds)> known = [];

    public CurvatureBasis Get(in DyadicCell cell, Span<Curvature> bounds)
    {
        CurvatureBasis basis = GetRegion(system.CurvatureRegion(cell), bounds);
        // A block may resist as a whole where the part of it that the cell needs does not.
        return basis == CurvatureBasis.Unknown ? GetRegion(cell, bounds) : basis;
    }

    private CurvatureBasis GetRegion(in DyadicCell region, Span<Curvature> bounds)
    {
        if (!known.TryGetValue(region, out (CurvatureBasis Basis, Curvature[] Bounds) entry))
        {
            entry.Bounds = new Curvature[bounds.Length];
            entry.Basis = system.Curvatures(region, frameBody, body, anchors, entry.Bounds);
            known.Add(region, entry);
        }

        entry.Bounds.CopyTo(bounds);
        return entry.Basis;
    }
}
