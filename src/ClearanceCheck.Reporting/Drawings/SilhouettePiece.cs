using System.Collections.Immutable;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>One convex piece of a part on the page: all points within a radius of a convex polygon.</summary>
/// <param name="Hull">The polygon's corners in order; one or two for a piece seen end-on.</param>
/// <param name="Radius">In the drawing's units.</param>
internal sealed record SilhouettePiece(ImmutableArray<PagePoint> Hull, double Radius)
{
    private const int StepsPerEdge = 24;

    /// <summary>What sticks out less is not seen.</summary>
    private const double Slack = 1e-6;

    public PagePoint Middle => Hull.Aggregate((a, b) => a + b) * (1.0 / Hull.Length);

    /// <summary>Places along its polygon, for pieces too thin to stand in.</summary>
    public IEnumerable<PagePoint> AlongHull()
    {
        for (int i = 0; i < Hull.Length; i++)
            for (int step = 0; step < StepsPerEdge; step++)
                yield return Hull[i] + ((Hull[(i + 1) % Hull.Length] - Hull[i]) * ((double)step / StepsPerEdge));
    }

    /// <summary>Half the girth of its box: no piece covers a larger one.</summary>
    public double Size => Hull.Max(p => p.X) - Hull.Min(p => p.X) + Hull.Max(p => p.Y) - Hull.Min(p => p.Y) + (4 * Radius);

    /// <summary>Whether all of another piece lies on this one.</summary>
    public bool Covers(SilhouettePiece other) => other.Hull.All(p => RoomBeside(p) <= Slack - other.Radius);

    /// <summary>Distance from a place to the piece's edge; negative inside.</summary>
    public double RoomBeside(PagePoint place)
    {
        double nearest = double.PositiveInfinity;
        bool isInside = Hull.Length > 2;
        for (int i = 0; i < Hull.Length; i++)
        {
            PagePoint from = Hull[i], to = Hull[(i + 1) % Hull.Length];
            nearest = Math.Min(nearest, place.DistanceTo(from, to));
            isInside &= PagePoint.Dot((to - from).Turned, place - from) >= 0;
        }

        return (isInside ? -nearest : nearest) - Radius;
    }

    /// <summary>Whether anything of the piece can be seen in a window from 0,0 with so much around it.</summary>
    public bool Touches(double width, double height, double around)
    {
        double reach = Radius + around;
        return Hull.Max(p => p.X) >= -reach && Hull.Min(p => p.X) <= width + reach && Hull.Max(p => p.Y) >= -reach && Hull.Min(p => p.Y) <= height + reach;
    }
}
