using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>The upper part of the tree of a solid of revolution: over its sections.</summary>
internal sealed class SectionTree
{
    private readonly List<(SectionBounds Bounds, int First, int Second)> inner = [];

    public SectionTree(ImmutableArray<Section> sections)
    {
        Bounds = [.. sections.Select(SectionBounds.Of)];
        Hollows = [.. sections.Select(HollowCone.Of)];
        Whole = Bounds[0];
        foreach (SectionBounds own in Bounds) Whole = Whole.With(own);
        _ = Build(0, sections.Length);
    }

    public SectionBounds Whole { get; }

    /// <summary>For each section.</summary>
    public ImmutableArray<SectionBounds> Bounds { get; }

    /// <summary>For each section, its inner side.</summary>
    public ImmutableArray<HollowCone?> Hollows { get; }

    /// <summary>Nodes over more than one section; a child is another of them, or the complement of a section's number.</summary>
    public IReadOnlyList<(SectionBounds Bounds, int First, int Second)> Inner => inner;

    public int InnerCount => inner.Count;

    private int Build(int from, int to)
    {
        if (to - from == 1) return ~from;
        int node = inner.Count;
        SectionBounds bounds = Bounds[from];
        for (int i = from + 1; i < to; i++) bounds = bounds.With(Bounds[i]);
        inner.Add((bounds, 0, 0));
        int middle = (from + to) / 2;
        inner[node] = (bounds, Build(from, middle), Build(middle, to));
        return node;
    }
}
