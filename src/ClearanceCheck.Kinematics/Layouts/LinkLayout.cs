using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle on two lower and two upper links, with a track bar or without.</summary>
/// <remarks>
/// Without a track bar the links stand at angles that hold the axle sideways: four exact rods. With one there is a rod too many, and the axle
/// moves only because the links' bushings give: the track bar is exact, each link a spring along its length.
/// </remarks>
public sealed class LinkLayout(bool hasTrackBar) : AxleLayout
{
    private static readonly ImmutableArray<string> Links = ["lower-link-left", "lower-link-right", "upper-link-left", "upper-link-right"];

    public override string Id => hasTrackBar ? "five-link" : "four-link";

    public override string Meaning => $"a solid axle on two lower links and two upper links{(hasTrackBar ? ", and a track bar" : "")}";

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        .. Links.SelectMany(l => LinkEnds(l, $"the {(l.EndsWith("left", StringComparison.Ordinal) ? "left" : "right")} {l.Split('-')[0]} link")),
        .. hasTrackBar ? LinkEnds("track-bar", "the track bar") : [],
    ];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override string? Assumption => hasTrackBar
        ? $"moves by what its links' bushings give: {SoftDefaults.LinkNPerMm} N/mm along each link (common practice, no source; softer or stiffer ones move the axle by little)."
        : null;

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        if (!hasTrackBar) return Links.Select(link => Rod(places, link));
        return Links.Select(link => (Joint)new Joint.Spring(
                link, 0, places.At($"{link}-frame"), places.Body("axle"), places.At($"{link}-axle"), SoftDefaults.LinkNPerMm))
            .Append(Rod(places, "track-bar"));
    }
}
