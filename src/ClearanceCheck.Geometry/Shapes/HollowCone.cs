using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>The cone on the inner side of a section: all of the section lies on it or outside, whatever its height.</summary>
/// <param name="Radius">Its radius where places along the axis are counted from, mm.</param>
/// <param name="Slope">By how much the radius grows along the axis.</param>
/// <param name="Cosine">Of the slope's angle: distances from the cone are that much shorter than differences of radius.</param>
internal readonly record struct HollowCone(double Radius, double Slope, double Cosine)
{
    // How far a corner may lie inside by rounding, as a share of its radius.
    private const double RoundingShare = 1e-12;

    /// <summary>The cone's radius at a place along the axis.</summary>
    public double RadiusAt(double along) => Radius + (Slope * along);

    /// <summary>The cone through the inner edge of a section; null for one that is all square to the axis or reaches it.</summary>
    public static HollowCone? Of(Section section)
    {
        ImmutableArray<ProfilePoint> corners = section.Corners;
        if (corners.Length == 1) return new HollowCone(corners[0].Radius, 0, 1);
        HollowCone? best = null;
        for (int i = 0; i < corners.Length; i++)
        {
            ProfilePoint a = corners[i], b = corners[(i + 1) % corners.Length];
            double along = b.Along - a.Along, up = b.Radius - a.Radius;
            if (along == 0) continue;
            double slope = up / along, cosine = Math.Abs(along) / Math.Sqrt((along * along) + (up * up));
            var cone = new HollowCone(a.Radius - (slope * a.Along), slope, cosine);
            double middle = (a.Along + b.Along) / 2;
            if (corners.All(c => c.Radius >= cone.RadiusAt(c.Along) - (RoundingShare * (1 + c.Radius))) && (best is null || cone.RadiusAt(middle) > best.Value.RadiusAt(middle)))
                best = cone;
        }

        return best is { } found && corners.Any(c => c.Radius > 0) ? found with { Radius = found.Radius - (RoundingShare * (1 + found.Radius)) } : null;
    }
}
