using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>A drag link from the pitman arm to one knuckle and a tie rod from knuckle to knuckle.</summary>
public sealed class CrossOverSteering : SteeringLinkage
{
    public override string Id => "cross-over";

    public override string Meaning => "a drag link to one knuckle and a tie rod between both";

    public override ImmutableArray<string> Bodies => [PitmanArm];

    public override string PitmanEnd => "drag-link-pitman";

    private protected override ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout) =>
    [
        .. Pitman,
        new("drag-link-pitman", "the middle of the ball that joins the drag link to the pitman arm", PitmanArm),
        new("drag-link-knuckle", "the middle of the ball that joins the drag link to the knuckle", EitherKnuckle),
        new("tie-rod-left", "the middle of the ball that joins the tie rod to the left knuckle", AxleLayout.Knuckle(true)),
        new("tie-rod-right", "the middle of the ball that joins the tie rod to the right knuckle", AxleLayout.Knuckle(false)),
    ];

    private protected override IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate)
    {
        bool left = IsOnLeft(places, "drag-link-knuckle");
        return
        [
            PitmanHinge(places),
            Rod(places, "drag-link", PitmanArm, "drag-link-pitman", AxleLayout.Knuckle(left), "drag-link-knuckle"),
            Rod(places, "tie-rod", AxleLayout.Knuckle(false), "tie-rod-right", AxleLayout.Knuckle(true), "tie-rod-left"),
            TurnOf(places, left, coordinate),
        ];
    }
}
