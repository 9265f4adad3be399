using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Shapes;

/// <summary>The shape of a part for given parameters, in the coordinates of the bodies that carry it.</summary>
public static class PartShapes
{
    /// <summary>True for a part that has a shape: a gap can be measured to it.</summary>
    public static bool HasShape(Part part) =>
        part.Form is not (PartForm.Hose or PartForm.BumpStop or PartForm.LimitStrap or PartForm.SteeringStop or PartForm.Unshaped or PartForm.Shock { Sleeves: null });

    /// <summary>Why a part has none, in words that go after its name.</summary>
    public static string WhyNone(Part part) => part.Form switch
    {
        PartForm.Hose => "only its length was checked; the shape of a hose between its ends is not computed",
        PartForm.Unshaped => "only gaps that were read to it were judged; the file does not say where it runs",
        PartForm.Shock => "it ends the travel here; the file does not say how thick its tube and rod are",
        PartForm.SteeringStop => "it ends the steering here; bolt and pad have no shape in the file",
        PartForm.LimitStrap => "it ends the travel here; the strap itself has no shape in the file",
        _ => "it ends the travel here; its body has no shape in the file",
    };

    /// <summary>The members of a part's shape, always in the same order; empty for a part without shape.</summary>
    /// <param name="part">The part.</param>
    /// <param name="motion">Names the bodies' numbers.</param>
    /// <param name="parameters">Values of the parameter vector.</param>
    public static ImmutableArray<ShapeMember> Of(Part part, VehicleMotion motion, ReadOnlySpan<double> parameters) => part.Form switch
    {
        PartForm.Chain chain => Fixed(part.Body, motion, Chain(chain, parameters)),
        PartForm.Plate plate => Fixed(part.Body, motion, Plate(plate, parameters)),
        PartForm.Box box => Fixed(part.Body, motion, new SolidBox(box.Corner.At(parameters), box.Opposite.At(parameters))),
        PartForm.Turned turned => Fixed(part.Body, motion, TurnedShapes.Turned(turned, parameters)),
        PartForm.Tire tire => Fixed(part.Body, motion, TurnedShapes.Tire(tire, parameters)),
        PartForm.Wheel wheel => Fixed(part.Body, motion, TurnedShapes.Wheel(wheel, parameters)),
        PartForm.Scanned scan => Fixed(part.Body, motion, Shifted.Of(scan.Scan.Solid, scan.Shift.At(parameters))),
        PartForm.Link link => [Between(part, atFirst: true, link.OutsideDiameter, null, motion, parameters)],
        PartForm.Shock { Sleeves: { } sleeves } => Sleeved(part, sleeves, motion, parameters),
        PartForm.Shaft shaft => Sleeved(part, shaft.Sleeves, motion, parameters),
        PartForm.LeafSpring spring => LeafSpringShape.Of(part, spring, motion, parameters),
        PartForm.Coil coil => [CoilShape.Of(coil, motion, parameters)],
        PartForm.Hose or PartForm.BumpStop or PartForm.LimitStrap or PartForm.SteeringStop or PartForm.Unshaped or PartForm.Shock => [],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static ImmutableArray<ShapeMember> Fixed(string body, VehicleMotion motion, Solid solid) =>
        [new ShapeMember([body], new RigidSolid(motion.Find(body).Number, solid))];

    private static CapsuleChain Chain(PartForm.Chain form, ReadOnlySpan<double> parameters)
    {
        var points = new Vector3d[form.Path.Length];
        for (int i = 0; i < points.Length; i++) points[i] = form.Path[i].At(parameters);
        return new CapsuleChain(points, form.OutsideDiameter.At(parameters) / 2);
    }

    private static SimplexTree Plate(PartForm.Plate form, ReadOnlySpan<double> parameters)
    {
        var outline = new Vector3d[form.Outline.Length];
        for (int i = 0; i < outline.Length; i++) outline[i] = form.Outline[i].At(parameters);
        return Simplices.Plate(outline, form.Thickness.At(parameters))
            ?? throw new InvalidOperationException("The outline of a plate crosses itself: the reader of files lets none through.");
    }

    private static ImmutableArray<ShapeMember> Sleeved(Part part, Sleeves sleeves, VehicleMotion motion, ReadOnlySpan<double> parameters) =>
    [
        Between(part, sleeves.TubeAtFirst, sleeves.TubeDiameter, sleeves.TubeLength, motion, parameters),
        Between(part, !sleeves.TubeAtFirst, sleeves.RodDiameter, sleeves.RodLength, motion, parameters),
    ];

    // A straight tube from one end towards the other, as long as it is or, without a length, up to there.
    private static ShapeMember Between(
        Part part, bool atFirst, MeasuredLength diameter, MeasuredLength? length, VehicleMotion motion, ReadOnlySpan<double> parameters)
    {
        Place first = part.Form.Ends[atFirst ? 0 : 1], second = part.Form.Ends[atFirst ? 1 : 0];
        Vector3d from = first.At.At(parameters), apart = second.At.At(parameters) - from;
        Vector3d to = length is { } typed ? from + (apart.NormalizedOr(Vector3d.UnitZ) * typed.At(parameters)) : from + apart;
        string body = motion.CarrierOf(part, atFirst);
        return new ShapeMember([body], new RigidSolid(motion.Find(body).Number, new CapsuleChain([from, to], diameter.At(parameters) / 2)));
    }
}
