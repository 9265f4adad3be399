using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>A connected anti-roll bar in motion: each arm turns about the line of the bar's bushings, held by its link. It twists, so the arms turn apart.</summary>
/// <remarks>It holds no wheel anywhere: how stiff it is changes what a pose costs, not where things are in it.</remarks>
public static class AntiRollBars
{
    /// <summary>Points to be measured for it.</summary>
    public static ImmutableArray<LayoutPoint> Points(AxleLayout layout, AntiRollBar bar) =>
    [
        .. AxleLayout.Sides.SelectMany(left => new LayoutPoint[]
        {
            new($"bar-pivot-{AxleLayout.Side(left)}", $"the middle of the {AxleLayout.Side(left)} bushing in which the anti-roll bar turns", Held(layout, bar, left)),
            new($"bar-arm-{AxleLayout.Side(left)}", $"the middle of the joint that holds the {AxleLayout.Side(left)} link to the bar's arm", Body(left)),
            new($"bar-link-{AxleLayout.Side(left)}", $"the middle of the joint at the other end of the {AxleLayout.Side(left)} link", Linked(layout, bar, left)),
        }),
    ];

    /// <summary>Its bodies, without the axle's name: one arm each side.</summary>
    public static ImmutableArray<string> Bodies { get; } = [.. AxleLayout.Sides.Select(Body)];

    /// <summary>Its joints.</summary>
    internal static IEnumerable<Joint> Joints(AxleLayout layout, AntiRollBar bar, LayoutPlaces places)
    {
        Vector3d line = places.At("bar-pivot-left") - places.At("bar-pivot-right");
        foreach (bool left in AxleLayout.Sides)
        {
            string side = AxleLayout.Side(left);
            int arm = places.Body(Body(left));
            yield return new Joint.Hinge($"anti-roll bar, {side} arm", places.Body(Held(layout, bar, left)), arm, places.At($"bar-pivot-{side}"), line);
            yield return new Joint.Rod($"bar-link-{side}", arm, places.At($"bar-arm-{side}"), places.Body(Linked(layout, bar, left)), places.At($"bar-link-{side}"));
        }
    }

    private static string Body(bool left) => $"anti-roll-bar-{AxleLayout.Side(left)}";

    private static string Held(AxleLayout layout, AntiRollBar bar, bool left) => bar.IsOnAxle ? Own(layout, left) : Vehicle.Chassis;

    private static string Linked(AxleLayout layout, AntiRollBar bar, bool left) => bar.IsOnAxle ? Vehicle.Chassis : Own(layout, left);

    // What the wheel's travel is read on: the axle, a beam, a knuckle.
    private static string Own(AxleLayout layout, bool left) => layout.TravelBodyName(left);
}
