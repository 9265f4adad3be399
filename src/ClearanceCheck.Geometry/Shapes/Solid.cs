namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A part's surface on one body as a binary tree of convex pieces: each node is a core plus a radius and contains all leaves below it.</summary>
/// <remarks>
/// Coordinates are the body's own, mm. Containment is exact in the sense that no point of a leaf lies outside a node above it by more
/// than rounding (1e-9 mm). A node need not contain the nodes between it and its leaves, which have a thickness of their own: nesting
/// them as well would make every node thicker and no bound truer. A new shape is one class here: <see cref="Gaps.SignedGap"/> measures the pieces of all shapes.
/// </remarks>
public abstract class Solid
{
    private protected Solid()
    {
    }

    /// <summary>The root is node 0.</summary>
    public abstract int NodeCount { get; }

    /// <summary>Points whose convex hull contains the core of every leaf: what a bound on motion has to look at.</summary>
    /// <remarks>The radius around the core is a ball and looks the same in every pose, so it needs no point of its own.</remarks>
    public abstract ReadOnlySpan<Vector3d> Anchors { get; }

    /// <summary>The first child, or -1 for a leaf.</summary>
    public abstract int Left(int node);

    /// <summary>The second child, or -1 for a leaf.</summary>
    public abstract int Right(int node);

    /// <summary>About how far the node reaches beyond the leaves below it, mm: says which node to halve first, bounds nothing. Zero for a leaf.</summary>
    public abstract double Thickness(int node);

    /// <summary>The largest n.x over the node, radius included. <paramref name="direction"/> is a unit vector in the body's frame.</summary>
    public abstract double Support(int node, Vector3d direction);

    /// <summary>How the node's corners are ordered.</summary>
    public abstract PieceKind Kind(int node);

    /// <summary>Writes the corners whose hull, widened by <see cref="Radius"/>, is the node.</summary>
    /// <param name="node">The node.</param>
    /// <param name="corners">Room for <see cref="Piece.MaximumCorners"/>.</param>
    /// <returns>How many were written.</returns>
    public abstract int Corners(int node, Span<Vector3d> corners);

    /// <summary>The radius around the node's corners' hull, mm.</summary>
    public abstract double Radius(int node);

    /// <summary>A lower bound of a point's distance from the leaves below a node, for a node around a convex hollow that holds the point.</summary>
    /// <remarks>
    /// Concave in the point and no steeper than one, over all space; so it holds for all points of a convex piece when it holds for the
    /// piece's corners. Negative, down to minus infinity, where it says nothing: outside the hollow, or for nodes that have none.
    /// </remarks>
    public virtual double InsideHollow(int node, Vector3d point) => double.NegativeInfinity;

    public bool IsLeaf(int node) => Left(node) < 0;
}
