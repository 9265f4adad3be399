using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>A relay rod between the pitman arm and an idler arm, and a tie rod from it to each knuckle.</summary>
public sealed class ParallelSteering : SteeringLinkage
{
    private const string Idler = "idler-arm", Relay = "relay-rod";

    public override string Id => "parallel";

    public override string Meaning => "a relay rod between pitman arm and idler arm, and two tie rods";

    public override ImmutableArray<string> Bodies => [PitmanArm, Idler, Relay];

    public override string PitmanEnd => "relay-pitman";

    private protected override ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout) =>
    [
        .. Pitman,
        new("idler-pivot", "the middle of the idler arm's pivot on the frame", Vehicle.Chassis),
        new("idler-axis", "a second point on the line of that pivot, above the first", Vehicle.Chassis),
        new("relay-pitman", "the middle of the ball that joins the relay rod to the pitman arm", Relay),
        new("relay-idler", "the middle of the ball that joins the relay rod to the idler arm", Relay),
        .. TieRods.Points(Relay),
    ];

    private protected override IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate)
    {
        int relay = places.Body(Relay), idler = places.Body(Idler);
        Vector3d pivot = places.At("idler-pivot");
        return
        [
            PitmanHinge(places),
            new Joint.Hinge("idler arm on the frame", 0, idler, pivot, places.At("idler-axis") - pivot),
            new Joint.Ball("relay rod on the pitman arm", places.Body(PitmanArm), relay, places.At("relay-pitman")),
            new Joint.Ball("relay rod on the idler arm", idler, relay, places.At("relay-idler")),
            new Joint.SpinHold("spin of the relay rod", relay, places.At("relay-idler") - places.At("relay-pitman")),
            .. TieRods.Joints(places, Relay),
            layout.KingpinBody(true) is null ? new Joint.Turn("steering", places.Body(PitmanArm), coordinate, 0) : TurnOf(places, IsOnLeft(places, "relay-pitman"), coordinate),
        ];
    }
}
