using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle known only by its hubs, the length of its arms and its track bar: a first look before the links are measured.</summary>
/// <remarks>
/// Two lower arms and one upper arm of one length, level at ride height, carry it as a parallelogram: the axle rises and falls on the arms' arc
/// and does not pitch. Real links differ, so what is found with it is as good as that.
/// </remarks>
public sealed class BeamAxleSimpleLayout : AxleLayout
{
    private const string ArmLength = "arm-length";

    // Where the arms stand on the axle: shares of the hub's distance, and the upper arm's height.
    private const double ArmShare = 0.6;
    private const double UpperMm = 150;

    public override string Id => "beam-axle-simple";

    public override string Meaning => "a solid axle by its hubs, the length of its arms and its track bar, as a first look";

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        new("arm-pivot-side", "the place of an arm's pivot on the frame, roughly: what counts is whether it lies ahead of the axle or behind it", Vehicle.Chassis),
        .. LinkEnds("track-bar", "the track bar"),
    ];

    public override ImmutableArray<LayoutFigure> Figures { get; } = [new(ArmLength, "from the axle to the pivot of its arms, or half of a leaf spring", null, 200, 2000)];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override string Assumption => "is taken as carried by three arms of one length, level at ride height: its links were not measured.";

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        Vector3d left = places.At("hub-left"), right = places.At("hub-right"), middle = Vector3d.Lerp(left, right, 0.5);
        double length = places.Figure(ArmLength);
        // Level at ride height: in the measured state the hubs are as far above that as their travels say.
        Vector3d reach = places.At("arm-pivot-side").X >= middle.X ? new(length, 0, 0) : new(-length, 0, 0);
        yield return Arm("left arm", Vector3d.Lerp(middle, left, ArmShare));
        yield return Arm("right arm", Vector3d.Lerp(middle, right, ArmShare));
        yield return Arm("upper arm", middle + (UpperMm * Vector3d.UnitZ));
        yield return Rod(places, "track-bar");

        Joint.Rod Arm(string name, Vector3d at)
        {
            double travel = 0.5 * (places.Axle.Left.MeasuredTravelMm(places.Parameters.Span) + places.Axle.Right.MeasuredTravelMm(places.Parameters.Span));
            double run = Math.Sqrt(Math.Max(0, (length * length) - (travel * travel)));
            return new Joint.Rod(name, 0, at + (reach * (run / length)) - (travel * Vector3d.UnitZ), places.Body("axle"), at);
        }
    }
}
