using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle on two leaf springs with a shackle each, with blocks or without.</summary>
/// <remarks>
/// Each half of a spring is an arc of one curvature from the edge of its clamp to its eye (<see cref="LeafShape"/>); one eye is on the frame, the
/// other on the shackle. Bending shares the load between the halves, the eyes give sideways. A lift block is a part of the axle: it needs no figure.
/// </remarks>
public sealed class LeafSpringLayout : AxleLayout
{
    /// <summary>The figure that says how long the leaf is held flat.</summary>
    public const string ClampLength = "clamp-length";

    public override string Id => "leaf-springs";

    public override string Meaning => "a solid axle on two leaf springs with shackles";

    public override bool Wraps => true;

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        .. Both("spring-eye-*-frame", "the middle of the bolt that holds the fixed eye of the * leaf spring to the frame", Vehicle.Chassis),
        .. Both("spring-centre-pin-*", "the middle of the main leaf of the * spring, where its centre pin goes through", "axle"),
        .. Both("shackle-*-frame", "the middle of the bolt that holds the * shackle to the frame", Vehicle.Chassis),
        .. Both("shackle-*-spring", "the middle of the bolt that holds the * spring's eye to its shackle", "shackle-*"),
    ];

    public override ImmutableArray<LayoutFigure> Figures { get; } =
        [new(ClampLength, "how long the leaf is held flat between the U-bolts, outside to outside", 120, 20, 400)];

    public override ImmutableArray<string> Steerings => SteeringCatalogue.Ids;

    public override string Assumption =>
        $"hangs on leaves that bend in one curvature from clamp to eye, of a rate of {SoftDefaults.LeafRateNPerMm} N/mm, held sideways by {SoftDefaults.LeafSidewaysNPerMm} N/mm at each eye (common practice, no source).";

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle", "shackle-left", "shackle-right"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        foreach (bool left in Sides)
        {
            string side = Side(left);
            Vector3d eye = places.At($"spring-eye-{side}-frame"), pin = places.At($"spring-centre-pin-{side}");
            Vector3d pivot = places.At($"shackle-{side}-frame"), end = places.At($"shackle-{side}-spring");
            int shackle = places.Body($"shackle-{side}");
            Vector3d across = Vector3d.Cross(Vector3d.UnitZ, Tangent(eye, pin, end)).NormalizedOr(Vector3d.UnitY);
            yield return new Joint.Hinge($"shackle-{side}", 0, shackle, pivot, across);
            foreach (Joint.Leaf half in HalvesOf($"{side} spring", (places.Body("axle"), pin), eye, (shackle, end), places.Figure(ClampLength))) yield return half;
        }
    }

    /// <summary>Both halves of a spring, from its clamp to the fixed eye and to the shackle's.</summary>
    /// <param name="name">What the spring is called.</param>
    /// <param name="seat">The axle's number and the middle of the main leaf at the centre pin.</param>
    /// <param name="eye">The middle of the fixed eye.</param>
    /// <param name="end">The shackle's number and the middle of the eye that it carries.</param>
    /// <param name="clampMm">How long the leaf is held flat.</param>
    internal static Joint.Leaf[] HalvesOf(string name, (int Body, Vector3d Pin) seat, Vector3d eye, (int Body, Vector3d Eye) end, double clampMm)
    {
        Vector3d along = Tangent(eye, seat.Pin, end.Eye), half = along * (0.5 * clampMm);
        return
        [
            Leaf($"{name}, fixed half", seat.Body, seat.Pin - half, -along, 0, eye),
            Leaf($"{name}, shackle half", seat.Body, seat.Pin + half, along, end.Body, end.Eye),
        ];
    }

    /// <summary>Torque about the axle for one radian of wind-up, both springs, N mm: 4 E I / a of each half.</summary>
    /// <remarks>Two arcs clamped at the seat whose ends stay where they are: the seat's turn t changes each tip by a t, against a stiffness of 4 E I / a^3.</remarks>
    public static double WrapNmmPerRad(IEnumerable<Joint> joints) => joints.OfType<Joint.Leaf>().Sum(leaf =>
    {
        double length = (leaf.Eye - leaf.Clamp).Length;
        return 4 * leaf.BendingStiffness / length;
    });

    // Of the circle through both eyes and the pin, near enough: the chords' directions, each with the other's length as weight.
    internal static Vector3d Tangent(Vector3d eye, Vector3d pin, Vector3d end)
    {
        Vector3d first = pin - eye, second = end - pin;
        Vector3d mean = (first.NormalizedOr(Vector3d.UnitX) * second.Length) + (second.NormalizedOr(Vector3d.UnitX) * first.Length);
        return mean.NormalizedOr(Vector3d.UnitX);
    }

    private static Joint.Leaf Leaf(string name, int axle, Vector3d clamp, Vector3d along, int eyeBody, Vector3d eye)
    {
        double length = (eye - clamp).Length;
        // Half of the spring's rate is the half's own: 4 E I / a^3.
        double bending = 0.5 * SoftDefaults.LeafRateNPerMm * length * length * length / 4;
        return new Joint.Leaf(name, axle, clamp, along, Vector3d.UnitZ, eyeBody, eye, bending, SoftDefaults.LeafSidewaysNPerMm);
    }
}
