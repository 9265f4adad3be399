using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>Each wheel on a lower and an upper arm with two pivots each, the knuckle on a ball of either and a tie rod or toe link.</summary>
public sealed class DoubleWishboneLayout : AxleLayout
{
    public override string Id => "double-wishbones";

    public override string Meaning => "each wheel on a lower and an upper arm, with a tie rod or toe link";

    public override bool IsSolid => false;

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(Knuckle),
        .. Both("lower-arm-*-front", "the middle of the front bushing that holds the * lower arm to the frame", Vehicle.Chassis),
        .. Both("lower-arm-*-rear", "the middle of the rear bushing that holds the * lower arm to the frame", Vehicle.Chassis),
        .. Both("lower-ball-*", "the middle of the * lower ball joint", "knuckle-*"),
        .. Both("upper-arm-*-front", "the middle of the front bushing that holds the * upper arm to the frame", Vehicle.Chassis),
        .. Both("upper-arm-*-rear", "the middle of the rear bushing that holds the * upper arm to the frame", Vehicle.Chassis),
        .. Both("upper-ball-*", "the middle of the * upper ball joint", "knuckle-*"),
        .. Both("tie-rod-*-inner", "the middle of the inner joint of the * tie rod or toe link", Vehicle.Chassis).Select(NotMirrored),
        .. Both("tie-rod-*-outer", "the middle of the joint that holds the * tie rod or toe link to the knuckle", "knuckle-*").Select(NotMirrored),
    ];

    public override ImmutableArray<string> Steerings => ["rack", "parallel"];

    public override ImmutableArray<string> Bodies(Axle axle) =>
        [.. Sides.SelectMany(left => new[] { $"lower-arm-{Side(left)}", $"upper-arm-{Side(left)}", Knuckle(left) })];

    public override string WheelBody(string axle, bool isSteered, bool isLeft) => $"{axle}/{Knuckle(isLeft)}";

    public override string TravelBodyName(bool isLeft) => Knuckle(isLeft);

    public override string? KingpinBody(bool isLeft) => null;

    public override (string Lower, string Upper, string Body)? KingpinOf(Axle axle, bool isLeft) =>
        ($"lower-ball-{Side(isLeft)}", $"upper-ball-{Side(isLeft)}", Knuckle(isLeft));

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        foreach (bool left in Sides)
        {
            string side = Side(left);
            int knuckle = places.Body(Knuckle(left));
            foreach (string arm in (string[])["lower", "upper"])
            {
                Vector3d front = places.At($"{arm}-arm-{side}-front"), rear = places.At($"{arm}-arm-{side}-rear");
                int body = places.Body($"{arm}-arm-{side}");
                yield return new Joint.Hinge($"pivots of the {side} {arm} arm", 0, body, front, rear - front);
                yield return new Joint.Ball($"{arm}-ball-{side}", body, knuckle, places.At($"{arm}-ball-{side}"));
            }

            // A steering linkage carries the inner joint; without one it is a toe link on the frame.
            if (places.Axle.Steering is null)
                yield return new Joint.Rod($"tie-rod-{side}", 0, places.At($"tie-rod-{side}-inner"), knuckle, places.At($"tie-rod-{side}-outer"));
        }
    }

    private static LayoutPoint NotMirrored(LayoutPoint point) => point with { IsMirrorable = false };
}
