using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping;

/// <summary>Which of two solids a search takes first, and in whose frame it runs: from the solids alone, so that the caller's order does not matter.</summary>
internal static class SweepOrder
{
    /// <summary>True when the second has to be taken first.</summary>
    /// <remarks>A rigid solid before a blended one, one with hollows before one without, then the lower body, then the shape.</remarks>
    public static bool IsSwapped(SweptSolid first, SweptSolid second)
    {
        int order = Rank(first).CompareTo(Rank(second));
        if (order == 0) order = Bodies(first).CompareTo(Bodies(second));
        return order == 0 ? IsAfter(first, second) : order > 0;
    }

    /// <summary>The frame: the first solid's own body; the chassis where both are blended and have none.</summary>
    public static int Frame(SweptSolid first) => first is RigidSolid rigid ? rigid.Body : 0;

    private static int Rank(SweptSolid solid) => solid switch
    {
        RigidSolid { Solid: Revolved } => 0,
        RigidSolid => 1,
        _ => 2,
    };

    private static (int First, int Second) Bodies(SweptSolid solid) => solid switch
    {
        RigidSolid rigid => (rigid.Body, rigid.Body),
        BlendedChain blended => (blended.NearBody, blended.FarBody),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // Two shapes on one body: rounding must not depend on the order either.
    private static bool IsAfter(SweptSolid first, SweptSolid second)
    {
        ReadOnlySpan<Vector3d> a = Anchors(first), b = Anchors(second);
        int order = a.Length.CompareTo(b.Length);
        for (int i = 0; order == 0 && i < a.Length; i++)
            for (int axis = 0; order == 0 && axis < 3; axis++) order = a[i][axis].CompareTo(b[i][axis]);
        if (order == 0 && first is RigidSolid one && second is RigidSolid other)
            order = one.Solid.Support(0, Vector3d.UnitX).CompareTo(other.Solid.Support(0, Vector3d.UnitX));
        return order > 0;
    }

    private static ReadOnlySpan<Vector3d> Anchors(SweptSolid solid) => solid switch
    {
        RigidSolid rigid => rigid.Solid.Anchors,
        BlendedChain blended => blended.Points.AsSpan(),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
