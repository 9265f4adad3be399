using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>Two half axles: each a beam that pivots on the frame near the centre plane, with a radius arm rigid on it that pivots on the frame.</summary>
public sealed class SplitBeamLayout : AxleLayout
{
    public override string Id => "split-beams";

    public override string Meaning => "two half axles, each a beam on a pivot and a radius arm";

    public override bool IsSolid => false;

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(left => Beam(left)),
        // The left wheel's beam may pivot right of the middle: the names tell the wheel, not the place.
        .. Both("beam-pivot-of-*", "the middle of the bolt on which the beam of the * wheel pivots on the frame", Vehicle.Chassis),
        .. Both("radius-arm-*-pivot", "the middle of the bushing that holds the * radius arm to the frame", Vehicle.Chassis),
    ];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override ImmutableArray<string> Bodies(Axle axle) => [.. Sides.Select(Beam)];

    public override string WheelBody(string axle, bool isSteered, bool isLeft) => $"{axle}/{(isSteered ? Knuckle(isLeft) : Beam(isLeft))}";

    public override string TravelBodyName(bool isLeft) => Beam(isLeft);

    public override string? KingpinBody(bool isLeft) => Beam(isLeft);

    public override IEnumerable<Joint> Joints(LayoutPlaces places) => Sides.Select(left =>
    {
        Geometry.Vector3d beam = places.At($"beam-pivot-of-{Side(left)}"), arm = places.At($"radius-arm-{Side(left)}-pivot");
        return new Joint.Hinge($"pivots of the {Side(left)} beam", 0, places.Body(Beam(left)), beam, arm - beam);
    });

    private static string Beam(bool isLeft) => $"beam-{Side(isLeft)}";
}
