using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>What steers the wheels of an axle: which points it needs and which joints it makes of them.</summary>
/// <remarks>
/// The coordinate is the turn of the knuckle that the drag link holds, rad, positive to the left, or where the knuckles hang on balls
/// what moves their tie rods: the pitman arm's turn, or the rack's way in mm, positive to the left of the vehicle. The wheels stand straight ahead
/// in the measured state.
/// </remarks>
public abstract class SteeringLinkage
{
    /// <summary>Instead of a body's name: the knuckle on the side on which the point lies.</summary>
    public const string EitherKnuckle = "knuckle";

    private protected const string PitmanArm = "pitman-arm";

    /// <summary>The word in files.</summary>
    public abstract string Id { get; }

    /// <summary>What it is, in a few words.</summary>
    public abstract string Meaning { get; }

    /// <summary>Its bodies besides the knuckles, without the axle's name.</summary>
    public abstract ImmutableArray<string> Bodies { get; }

    /// <summary>True when the coordinate is a length: a rack that moves knuckles on balls.</summary>
    public virtual bool IsLength(AxleLayout layout) => false;

    /// <summary>Points to be measured besides the layout's.</summary>
    public ImmutableArray<LayoutPoint> Points(AxleLayout layout) =>
    [
        .. layout.KingpinBody(true) is null ? [] : Kingpins(layout),
        .. OwnPoints(layout).Where(p => !layout.Points.Any(own => own.Name == p.Name)).Select(p => p with { IsMirrorable = false }),
    ];

    /// <summary>The knuckles' hinges, the linkage's joints and the coordinate's setting.</summary>
    /// <param name="layout">The axle's layout.</param>
    /// <param name="places">Its points and bodies.</param>
    /// <param name="coordinate">The number of the steering coordinate.</param>
    public IEnumerable<Joint> Joints(AxleLayout layout, LayoutPlaces places, int coordinate)
    {
        if (layout.KingpinBody(true) is not null)
            foreach (bool left in AxleLayout.Sides)
            {
                string side = AxleLayout.Side(left);
                Vector3d lower = places.At($"kingpin-{side}-lower"), upper = places.At($"kingpin-{side}-upper");
                yield return new Joint.Hinge(
                    $"kingpin-{side}", places.Body(layout.KingpinBody(left)!), places.Body(AxleLayout.Knuckle(left)), lower, upper - lower);
            }

        foreach (Joint joint in OwnJoints(layout, places, coordinate)) yield return joint;
    }

    /// <summary>Where the pitman arm's end may come to before the steering box ends its turn; null where there is none.</summary>
    public virtual string? PitmanEnd => null;

    private protected abstract ImmutableArray<LayoutPoint> OwnPoints(AxleLayout layout);

    private protected abstract IEnumerable<Joint> OwnJoints(AxleLayout layout, LayoutPlaces places, int coordinate);

    /// <summary>The knuckle that a point of the linkage is joined to: the nearer one.</summary>
    private protected static bool IsOnLeft(LayoutPlaces places, string point) => places.At(point).Y > 0;

    private protected static ImmutableArray<LayoutPoint> Pitman { get; } =
    [
        new("pitman-pivot", "the middle of the steering box's output shaft, where the pitman arm is clamped on it", Vehicle.Chassis),
        new("pitman-axis", "a second point on the line of that shaft, above the first", Vehicle.Chassis),
    ];

    private protected static Joint.Hinge PitmanHinge(LayoutPlaces places)
    {
        Vector3d pivot = places.At("pitman-pivot");
        return new Joint.Hinge("pitman arm on its shaft", 0, places.Body(PitmanArm), pivot, places.At("pitman-axis") - pivot);
    }

    private protected static Joint Rod(LayoutPlaces places, string name, string firstBody, string first, string secondBody, string second) =>
        new Joint.Rod(name, places.Body(firstBody), places.At(first), places.Body(secondBody), places.At(second));

    /// <summary>Sets the turn of a knuckle on its kingpin.</summary>
    private protected static Joint TurnOf(LayoutPlaces places, bool left, int coordinate) =>
        new Joint.Turn("steering", places.Body(AxleLayout.Knuckle(left)), coordinate, 0);

    private static IEnumerable<LayoutPoint> Kingpins(AxleLayout layout)
    {
        foreach (bool left in AxleLayout.Sides)
        {
            string side = AxleLayout.Side(left), body = layout.KingpinBody(left)!;
            yield return new LayoutPoint($"kingpin-{side}-lower", $"the middle of the lower ball joint or the lower end of the kingpin of the {side} knuckle", body) { IsMirrorable = false };
            yield return new LayoutPoint($"kingpin-{side}-upper", $"the middle of the upper ball joint or the upper end of the kingpin of the {side} knuckle", body) { IsMirrorable = false };
        }
    }
}
