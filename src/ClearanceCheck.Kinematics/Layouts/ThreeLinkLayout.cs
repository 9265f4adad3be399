using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle on two lower links, one upper link and a track bar: four exact rods.</summary>
public sealed class ThreeLinkLayout : AxleLayout
{
    private static readonly ImmutableArray<string> Rods = ["lower-link-left", "lower-link-right", "upper-link", "track-bar"];

    public override string Id => "three-link";

    public override string Meaning => "a solid axle on two lower links, one upper link and a track bar";

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        .. LinkEnds("lower-link-left", "the left lower link"), .. LinkEnds("lower-link-right", "the right lower link"),
        .. LinkEnds("upper-link", "the upper link"), .. LinkEnds("track-bar", "the track bar"),
    ];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places) => Rods.Select(rod => Rod(places, rod));
}
