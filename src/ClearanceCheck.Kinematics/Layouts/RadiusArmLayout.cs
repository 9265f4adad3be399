using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle on two radius arms, each on one bushing at the frame and two at the axle, and a track bar.</summary>
/// <remarks>The arms are bodies of their own: rigid on the axle they could not let one wheel rise and the other drop.</remarks>
public sealed class RadiusArmLayout : AxleLayout
{
    public override string Id => "radius-arms";

    public override string Meaning => "a solid axle on two radius arms and a track bar";

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        .. Both("radius-arm-*-frame", "the middle of the bushing that holds the * radius arm to the frame", Vehicle.Chassis),
        .. Both("radius-arm-*-axle-front", "the middle of the front one of the two bushings that hold the * radius arm to the axle", "axle"),
        .. Both("radius-arm-*-axle-rear", "the middle of the rear one of the two bushings that hold the * radius arm to the axle", "axle"),
        .. LinkEnds("track-bar", "the track bar"),
    ];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override string Assumption =>
        $"moves by what its arms' bushings give: {SoftDefaults.ArmBushingNPerMm.X} N/mm across each bolt, {SoftDefaults.ArmBushingNPerMm.Y} N/mm along it (common practice, no source; a softer or stiffer one moves the axle by little).";

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle", "radius-arm-left", "radius-arm-right"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        int axle = places.Body("axle");
        yield return Rod(places, "track-bar");
        foreach (bool left in Sides)
        {
            string name = $"radius-arm-{Side(left)}";
            int arm = places.Body(name);
            yield return Bushing($"{name}-frame", 0, arm, SoftDefaults.ArmTurningNmmPerRad, places);
            yield return Bushing($"{name}-axle-front", axle, arm, default, places);
            yield return Bushing($"{name}-axle-rear", axle, arm, default, places);
        }
    }

    private static Joint.Bushing Bushing(string point, int housing, int arm, Vector3d turning, LayoutPlaces places) =>
        new(point, housing, arm, places.At(point), Rotation.Identity, SoftDefaults.ArmBushingNPerMm, turning, RidesOnHousing: true);
}
