using System.Collections.Immutable;
using System.Numerics;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A solid of revolution: convex sections turned around an axis, hollow where no section is. Tires, wheels, rotors, drums, housings.</summary>
/// <remarks>
/// No ring is convex, so it is a tree of staves: first over the sections, then over sectors of the full turn, halved again and again. A
/// leaf is the hull of its section at the sector's two ends and where the tangents of the ends meet, so it holds the true sector and is
/// a polytope. With N sectors it sticks out by R (1 / cos(pi / N) - 1) and in by R (1 - cos(pi / N)): at most <see cref="FacetMm"/> each,
/// on the side of a smaller gap. Nothing is stored for a stave. Where the first sector begins is arbitrary, so carrying the solid
/// elsewhere may change a gap by as much.
/// </remarks>
public sealed class Revolved : Solid
{
    /// <summary>The usual excess of the facets, mm.</summary>
    public const double UsualFacetMm = 0.005;

    private const int MostLevels = 11;
    private const int WideLevels = 3;

    private readonly SectionTree tree;
    private readonly Vector3d[] anchors;
    private readonly Vector3d right;
    private readonly Vector3d up;
    private readonly int levels;
    private readonly int sectorNodes;

    /// <param name="origin">Where places along the axis are counted from.</param>
    /// <param name="axis">Any length.</param>
    /// <param name="sections">In any order; they may overlap.</param>
    /// <param name="facetMm">By how much facets may stick out.</param>
    /// <exception cref="ArgumentException">No section, an axis without length, or a number that is negative or not finite.</exception>
    public Revolved(Vector3d origin, Vector3d axis, ImmutableArray<Section> sections, double facetMm = UsualFacetMm)
    {
        if (!origin.IsFinite || !axis.IsFinite || !(axis.LengthSquared > 0)) throw new ArgumentException("A solid of revolution needs a finite origin and an axis.", nameof(axis));
        if (sections.IsEmpty) throw new ArgumentException("A solid of revolution needs a section.", nameof(sections));
        if (!(facetMm >= 0) || !double.IsFinite(facetMm)) throw new ArgumentException("The excess of the facets must be zero or more and finite.", nameof(facetMm));
        foreach (Section section in sections)
        {
            if (section.Corners.Length is 0 or > Section.MaximumCorners) throw new ArgumentException("A section has one to four corners.", nameof(sections));
            if (!(section.Radius >= 0) || !section.Corners.All(c => c.Radius >= 0 && double.IsFinite(c.Radius + c.Along + section.Radius)))
                throw new ArgumentException("A section's radii must be zero or more and finite.", nameof(sections));
        }

        (Origin, Axis, Sections) = (origin, axis.NormalizedOr(Vector3d.UnitZ), sections);
        (right, FacetMm) = (Axis.AnyPerpendicular(), facetMm);
        up = Vector3d.Cross(Axis, right);
        tree = new SectionTree(sections);
        levels = WideLevels;
        while (levels < MostLevels && Outward(tree.Whole.HighRadius) > facetMm) levels++;
        sectorNodes = (2 << levels) - 1;
        anchors = Box();
    }

    public Vector3d Origin { get; }

    /// <summary>Unit vector.</summary>
    public Vector3d Axis { get; }

    public ImmutableArray<Section> Sections { get; }

    public double FacetMm { get; }

    public override int NodeCount => tree.InnerCount + (Sections.Length * sectorNodes);

    public override ReadOnlySpan<Vector3d> Anchors => anchors;

    public override int Left(int node) => Child(node, 0);

    public override int Right(int node) => Child(node, 1);

    public override double Thickness(int node)
    {
        StaveNode at = At(node);
        if (at.Level == levels) return 0;
        if (at.IsWide) return at.Bounds.HighRadius + (at.IsOneSection ? 0 : at.Bounds.HighAlong - at.Bounds.LowAlong);
        double cosine = RoundTable.Cosine(at.Level);
        return at.Bounds.HighRadius * ((1 / cosine) - cosine);
    }

    public override double Support(int node, Vector3d direction)
    {
        Span<Vector3d> corners = stackalloc Vector3d[Piece.MaximumCorners];
        return new Piece(corners[..Corners(node, corners)], PieceKind.Stave, Radius(node)).Support(direction);
    }

    public override PieceKind Kind(int node) => PieceKind.Stave;

    /// <summary>The section's own; for a node that holds others also what their facets stick out over the circle.</summary>
    public override double Radius(int node)
    {
        StaveNode at = At(node);
        return at.Bounds.Radius + (at.Level == levels ? 0 : Outward(at.Bounds.HighRadius));
    }

    public override int Corners(int node, Span<Vector3d> corners)
    {
        StaveNode at = At(node);
        return at.IsWide ? WideCorners(at, corners) : SectorCorners(at, corners);
    }

    public override double InsideHollow(int node, Vector3d point)
    {
        StaveNode at = At(node);
        if (!at.IsOneSection || tree.Hollows[at.Section] is not { } hollow) return double.NegativeInfinity;
        Vector3d from = point - Origin;
        double along = Vector3d.Dot(from, Axis), radius = (from - (Axis * along)).Length;
        // The chords of the facets lie nearer to the axis than the circle.
        double inward = at.Bounds.HighRadius * (1 - RoundTable.Cosine(levels));
        return ((hollow.RadiusAt(along) - radius) * hollow.Cosine) - at.Bounds.Radius - inward;
    }

    private double Outward(double radius) => radius * ((1 / RoundTable.Cosine(levels)) - 1);

    private StaveNode At(int node)
    {
        if (node < tree.InnerCount) return new StaveNode(tree.Inner[node].Bounds, -1, 0, 0);
        (int section, int local) = Math.DivRem(node - tree.InnerCount, sectorNodes);
        int level = BitOperations.Log2((uint)(local + 1));
        return new StaveNode(tree.Bounds[section], section, level, local + 1 - (1 << level));
    }

    private int Child(int node, int which)
    {
        if (node < tree.InnerCount)
        {
            int child = which == 0 ? tree.Inner[node].First : tree.Inner[node].Second;
            return child >= 0 ? child : tree.InnerCount + (~child * sectorNodes);
        }

        (int section, int local) = Math.DivRem(node - tree.InnerCount, sectorNodes);
        int below = (2 * local) + 1 + which;
        return below < sectorNodes ? tree.InnerCount + (section * sectorNodes) + below : -1;
    }

    // The full turn, a half or a quarter: the rectangle around the sections, its outer side as a polygon around the circle.
    private int WideCorners(in StaveNode at, Span<Vector3d> corners)
    {
        int count = 0, sides = 8 >> at.Level, first = at.Sector * sides;
        SectionBounds bounds = at.Bounds;
        double around = bounds.HighRadius / RoundTable.Cosine(WideLevels);
        foreach (double along in (ReadOnlySpan<double>)[bounds.LowAlong, bounds.HighAlong])
        {
            for (int i = 0; i < sides; i++) corners[count++] = Point(around, along, RoundTable.Between(WideLevels, first + i));
            if (at.Level == 0) continue;
            foreach (int end in (ReadOnlySpan<int>)[first, first + sides])
            {
                corners[count++] = Point(bounds.HighRadius, along, RoundTable.At(WideLevels, end));
                corners[count++] = Point(bounds.LowRadius, along, RoundTable.At(WideLevels, end));
            }
        }

        return count;
    }

    // The section at one end, where the tangents meet, and at the other end.
    private int SectorCorners(in StaveNode at, Span<Vector3d> corners)
    {
        ImmutableArray<ProfilePoint> section = Sections[at.Section].Corners;
        int size = section.Length;
        double stretch = 1 / RoundTable.Cosine(at.Level);
        for (int i = 0; i < size; i++)
        {
            (double radius, double along) = (section[i].Radius, section[i].Along);
            corners[i] = Point(radius, along, RoundTable.At(at.Level, at.Sector));
            corners[size + i] = Point(radius * stretch, along, RoundTable.Between(at.Level, at.Sector));
            corners[(2 * size) + i] = Point(radius, along, RoundTable.At(at.Level, at.Sector + 1));
        }

        return 3 * size;
    }

    private Vector3d Point(double radius, double along, (double Cosine, double Sine) direction) =>
        Origin + (Axis * along) + (right * (radius * direction.Cosine)) + (up * (radius * direction.Sine));

    private Vector3d[] Box()
    {
        SectionBounds bounds = tree.Whole;
        double reach = bounds.HighRadius / RoundTable.Cosine(WideLevels);
        var corners = new Vector3d[8];
        for (int i = 0; i < 8; i++)
            corners[i] = Origin + (Axis * ((i & 1) == 0 ? bounds.LowAlong : bounds.HighAlong)) + (right * ((i & 2) == 0 ? -reach : reach)) + (up * ((i & 4) == 0 ? -reach : reach));
        return corners;
    }

    private readonly record struct StaveNode(SectionBounds Bounds, int Section, int Level, int Sector)
    {
        public bool IsOneSection => Section >= 0;

        public bool IsWide => Level < WideLevels;
    }
}
