using System.Collections.Immutable;
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
        new("hub-left", "the centre of the left wheel's mounting face"),
        new("hub-right", "the centre of the right wheel's mounting face"),
        new("lower-link-left-frame", "the middle of the bolt that holds the left lower link to the frame"),
        new("lower-link-left-axle", "the middle of the bolt that holds the left lower link to the axle"),
        new("lower-link-right-frame", "the middle of the bolt that holds the right lower link to the frame"),
        new("lower-link-right-axle", "the middle of the bolt that holds the right lower link to the axle"),
        new("upper-link-frame", "the middle of the bolt that holds the upper link to the frame"),
        new("upper-link-axle", "the middle of the bolt that holds the upper link to the axle"),
        new("track-bar-frame", "the middle of the bolt or ball that holds the track bar to the frame"),
        new("track-bar-axle", "the middle of the bolt or ball that holds the track bar to the axle"),
    ];

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle"];

    public override IEnumerable<Joint> Joints(Axle axle, ReadOnlyMemory<double> parameters, Func<string, int> bodyNumber)
    {
        int body = bodyNumber($"{axle.Name}/axle");
        foreach (string rod in Rods)
            yield return new Joint.Rod(
                rod, 0, axle.Points[$"{rod}-frame"].At(parameters.Span), body, axle.Points[$"{rod}-axle"].At(parameters.Span));
    }
}
