namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A part's surface on one body as a binary tree of convex pieces: each node is a core plus a radius and contains all leaves below it.</summary>
/// <remarks>
/// Coordinates are the body's own, mm. Containment is exact in the sense that no point of a leaf lies outside a node above it by more
/// than rounding (1e-9 mm). A node need not contain the nodes between it and its leaves, which have a thickness of their own: nesting
/// them as well would make every node thicker and no bound truer. A new shape is one class here and one kernel a partner shape in <see cref="Gaps"/>.
/// </remarks>
public abstract class Solid
{
    private protected Solid()
    {
    }

    /// <summary>The root is node 0.</summary>
    public abstract int NodeCount { get; }

    /// <summary>Points whose convex hull contains the core of every node: what a bound on motion has to look at.</summary>
    /// <remarks>The radius around the core is a ball and looks the same in every pose, so it needs no point of its own.</remarks>
    public abstract ReadOnlySpan<Vector3d> Anchors { get; }

    /// <summary>The first child, or -1 for a leaf.</summary>
    public abstract int Left(int node);

    /// <summary>The second child, or -1 for a leaf.</summary>
    public abstract int Right(int node);

    /// <summary>By how much the node may reach beyond the leaves below it, mm; zero for a leaf.</summary>
    public abstract double Thickness(int node);

    /// <summary>The largest n.x over the node, radius included. <paramref name="direction"/> is a unit vector in the body's frame.</summary>
    public abstract double Support(int node, Vector3d direction);

    public bool IsLeaf(int node) => Left(node) < 0;
}
