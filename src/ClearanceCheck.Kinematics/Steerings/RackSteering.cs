using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>A rack that slides along the line of its two inner tie-rod joints, and a tie rod to each knuckle.</summary>
public sealed class RackSteering : SteeringLinkage
{
    private const string Rack = "rack";

    public override string Id => Rack;

    public override string Meaning => "a rack with two tie rods";

    public override ImmutableArray<string> Bodies => [Rack];

    public override bool IsLength(AxleLayout layout) => layout.KingpinBody(true) is null;

    private protected override ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout) => TieRods.Points(Rack);

    private protected override IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate)
    {
        int rack = places.Body(Rack);
        Vector3d left = places.At("tie-rod-left-inner"), right = places.At("tie-rod-right-inner");
        return
        [
            new Joint.Slide("rack in its housing", 0, rack, Vector3d.Lerp(left, right, 0.5), left - right),
            .. TieRods.Joints(places, Rack),
            IsLength(layout) ? new Joint.Shift("steering", rack, coordinate, 0) : TurnOf(places, true, coordinate),
        ];
    }
}
