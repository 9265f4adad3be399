using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>A drag link from the pitman arm to the far knuckle, and a tie rod from the drag link to the other one.</summary>
public sealed class InvertedYSteering : SteeringLinkage
{
    private const string DragLink = "drag-link";

    public override string Id => "inverted-y";

    public override string Meaning => "a drag link to one knuckle and a tie rod from the drag link to the other";

    public override ImmutableArray<string> Bodies => [PitmanArm, DragLink];

    public override string PitmanEnd => "drag-link-pitman";

    private protected override ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout) =>
    [
        .. Pitman,
        new("drag-link-pitman", "the middle of the ball that joins the drag link to the pitman arm", DragLink),
        new("drag-link-knuckle", "the middle of the ball that joins the drag link to the far knuckle", DragLink),
        new("tie-rod-link", "the middle of the ball that joins the tie rod to the drag link", DragLink),
        new("tie-rod-knuckle", "the middle of the ball that joins the tie rod to the other knuckle", EitherKnuckle),
    ];

    private protected override IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate)
    {
        bool left = IsOnLeft(places, "drag-link-knuckle");
        int link = places.Body(DragLink);
        return
        [
            PitmanHinge(places),
            new Joint.Ball("drag link on the pitman arm", places.Body(PitmanArm), link, places.At("drag-link-pitman")),
            new Joint.Ball("drag link on its knuckle", link, places.Body(AxleLayout.Knuckle(left)), places.At("drag-link-knuckle")),
            new Joint.SpinHold("spin of the drag link", link, places.At("drag-link-knuckle") - places.At("drag-link-pitman")),
            Rod(places, "tie-rod", DragLink, "tie-rod-link", AxleLayout.Knuckle(!left), "tie-rod-knuckle"),
            TurnOf(places, left, coordinate),
        ];
    }
}
