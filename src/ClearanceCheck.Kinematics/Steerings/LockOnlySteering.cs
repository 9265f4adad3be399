using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>Only how far the wheels turn: both knuckles turn alike about their kingpins, whatever rods turn them.</summary>
public sealed class LockOnlySteering : SteeringLinkage
{
    public override string Id => "lock-only";

    public override string Meaning => "only a lock angle each way; both wheels turn alike";

    public override ImmutableArray<string> Bodies => [];

    private protected override ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout) => [];

    private protected override IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate) =>
        [TurnOf(places, true, coordinate), TurnOf(places, false, coordinate)];
}
