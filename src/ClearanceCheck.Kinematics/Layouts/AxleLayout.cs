using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>How an axle hangs on the chassis: which points it needs and which joints it makes of them.</summary>
/// <remarks>Coordinates of its pose space: 0 left travel, 1 right travel, mm from ride height, bump positive; then steering and axle wrap where it has them.</remarks>
public abstract class AxleLayout
{
    /// <summary>The word in files.</summary>
    public abstract string Id { get; }

    /// <summary>What it is, in a few words.</summary>
    public abstract string Meaning { get; }

    /// <summary>Points to be measured, the hubs among them; empty for a layout whose file spells out its joints.</summary>
    public abstract ImmutableArray<LayoutPoint> Points { get; }

    /// <summary>Lengths to be measured that are no points.</summary>
    public virtual ImmutableArray<LayoutFigure> Figures => [];

    /// <summary>Ids of the steering linkages that go with it.</summary>
    public virtual ImmutableArray<string> Steerings => [];

    /// <summary>True when the axle winds up on its springs.</summary>
    public virtual bool Wraps => false;

    /// <summary>True when one body reaches from wheel to wheel, so that the two hubs give the direction of their axes.</summary>
    public virtual bool IsSolid => true;

    /// <summary>What its motion rests on that nobody measured; null for links that are told by their points alone.</summary>
    public virtual string? Assumption => null;

    /// <summary>Its moving bodies, without the axle's name.</summary>
    public abstract ImmutableArray<string> Bodies(Axle axle);

    /// <summary>Its joints besides the settings.</summary>
    public abstract IEnumerable<Joint> Joints(LayoutPlaces places);

    /// <summary>The body that a wheel is bolted to, with the axle's name.</summary>
    /// <param name="axle">The axle's name.</param>
    /// <param name="isSteered">True when it has a steering linkage.</param>
    /// <param name="isLeft">Which wheel.</param>
    public virtual string WheelBody(string axle, bool isSteered, bool isLeft) => $"{axle}/{(isSteered ? Knuckle(isLeft) : "axle")}";

    /// <summary>The body that a wheel's travel is read on, with the axle's name: it carries the hub, straight ahead, whatever the steering does.</summary>
    public virtual string TravelBody(Axle axle, bool isLeft) => $"{axle.Name}/{TravelBodyName(isLeft)}";

    /// <summary>The same without the axle's name, for layouts that bring their own bodies.</summary>
    public virtual string TravelBodyName(bool isLeft) => "axle";

    /// <summary>The body that carries a wheel's kingpin, without the axle's name; null where the knuckle hangs on balls.</summary>
    public virtual string? KingpinBody(bool isLeft) => "axle";

    /// <summary>The points that the line goes through about which a knuckle turns, lower one first, and the body they ride on, without the axle's name; null where none are measured.</summary>
    public virtual (string Lower, string Upper, string Body)? KingpinOf(Axle axle, bool isLeft) =>
        axle.Points.ContainsKey($"kingpin-{Side(isLeft)}-lower") && KingpinBody(isLeft) is { } body
            ? ($"kingpin-{Side(isLeft)}-lower", $"kingpin-{Side(isLeft)}-upper", body)
            : null;

    /// <summary>The knuckle's name, without the axle's.</summary>
    public static string Knuckle(bool isLeft) => $"knuckle-{Side(isLeft)}";

    /// <summary>The word for a side.</summary>
    public static string Side(bool isLeft) => isLeft ? "left" : "right";

    /// <summary>Both sides, left first.</summary>
    internal static ImmutableArray<bool> Sides { get; } = [true, false];

    /// <summary>The two hubs on the bodies that their travel is read on.</summary>
    /// <param name="body">The body of each, without the axle's name.</param>
    private protected static ImmutableArray<LayoutPoint> Hubs(Func<bool, string> body) =>
        [.. Sides.Select(left => new LayoutPoint($"hub-{Side(left)}", $"the centre of the {Side(left)} wheel's mounting face", body(left)))];

    /// <summary>A point on each side.</summary>
    /// <param name="name">Its name with <c>*</c> for the side.</param>
    /// <param name="where">The sentence with <c>*</c> for the side.</param>
    /// <param name="body">Its body with <c>*</c> for the side.</param>
    private protected static IEnumerable<LayoutPoint> Both(string name, string where, string body) =>
        Sides.Select(left => new LayoutPoint(name.Replace("*", Side(left)), where.Replace("*", Side(left)), body.Replace("*", Side(left))));

    /// <summary>Both ends of a link between the frame and the axle.</summary>
    private protected static ImmutableArray<LayoutPoint> LinkEnds(string name, string words) =>
    [
        new($"{name}-frame", $"the middle of the bolt or ball that holds {words} to the frame", Vehicle.Chassis),
        new($"{name}-axle", $"the middle of the bolt or ball that holds {words} to the axle", "axle"),
    ];

    /// <summary>A rod between the ends of a link.</summary>
    private protected static Joint Rod(LayoutPlaces places, string name) =>
        new Joint.Rod(name, 0, places.At($"{name}-frame"), places.Body("axle"), places.At($"{name}-axle"));
}
