namespace ClearanceCheck.Geometry.Shapes;

/// <summary>The rectangle of the half plane around one or more sections, and their largest radius, mm.</summary>
internal readonly record struct SectionBounds(double LowRadius, double HighRadius, double LowAlong, double HighAlong, double Radius)
{
    public static SectionBounds Of(Section section)
    {
        ProfilePoint first = section.Corners[0];
        var bounds = new SectionBounds(first.Radius, first.Radius, first.Along, first.Along, section.Radius);
        foreach (ProfilePoint corner in section.Corners)
            bounds = bounds.With(new SectionBounds(corner.Radius, corner.Radius, corner.Along, corner.Along, section.Radius));
        return bounds;
    }

    public SectionBounds With(in SectionBounds other) => new(
        Math.Min(LowRadius, other.LowRadius), Math.Max(HighRadius, other.HighRadius),
        Math.Min(LowAlong, other.LowAlong), Math.Max(HighAlong, other.HighAlong), Math.Max(Radius, other.Radius));
}
