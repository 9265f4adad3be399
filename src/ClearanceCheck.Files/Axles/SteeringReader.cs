using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads <c>steering</c> of an axle: its linkage and how far it is looked at each way; of a free layout the joint that it turns or shifts.</summary>
internal static class SteeringReader
{
    private const double LeastBoxEnd = 10, MostBoxEnd = 60;

    /// <summary>The linkage that is typed, where it is one that goes with the layout; nothing is said yet.</summary>
    public static SteeringLinkage? LinkageOf(Field field, AxleLayout layout) =>
        (field.Node as MappingNode)?.Find("kind")?.Value is ScalarNode { Text: var kind } && layout.Steerings.Contains(kind) ? SteeringCatalogue.Find(kind) : null;

    /// <summary>The steering; null where none is typed or it is faulty, which is said.</summary>
    /// <param name="field">The value of the key.</param>
    /// <param name="layout">The axle's layout.</param>
    /// <param name="axle">The axle's name.</param>
    /// <param name="geometry">Its points and joints; null where they are faulty.</param>
    /// <param name="draft">The model so far.</param>
    public static Steering? Read(Field field, AxleLayout layout, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        Steering? steering = field.Mapping(r =>
        {
            if (layout.Steerings.IsEmpty && (layout is not FreeLayout || r.Has("kind"))) return NoLinkage(r, layout);
            return layout is FreeLayout ? ReadFree(r, axle, geometry, draft) : ReadLinkage(r, layout);
        });
        if (steering is null || geometry is null) return null;
        draft.Remember($"axles/{axle}/steering", field.Node!.Heading);
        draft.Assume($"axles/{axle}/steering", $"The wheels are taken as straight ahead in the state {geometry.MeasuredIn}, in which the axle was measured.");
        return steering;
    }

    private static Steering? NoLinkage(MappingReader reader, AxleLayout layout)
    {
        FileMessages.NoLinkage(reader, layout);
        reader.AllowAll();
        return null;
    }

    private static Steering? ReadLinkage(MappingReader reader, AxleLayout layout)
    {
        if (reader.Required("kind", "how its wheels are steered").Word(layout.Steerings) is not { } kind)
        {
            reader.AllowAll();
            return null;
        }

        SteeringLinkage linkage = SteeringCatalogue.Find(kind.Value)!;
        Boxed<(double Left, double Right)>? range = RangeOf(linkage, layout).Read(reader);
        Field endField = linkage.PitmanEnd is null ? default : reader.Optional("box-end");
        Placed<Angle>? end = Angles.Read(endField, LeastBoxEnd, MostBoxEnd, "how far a steering box turns its arm each way");
        if (range is null || (endField.IsPresent && end is null)) return null;
        return new Steering(kind.Value, range.Value.Left, range.Value.Right, end?.Value.Radians);
    }

    private static SteeringRange RangeOf(SteeringLinkage linkage, AxleLayout layout)
    {
        if (linkage.IsLength(layout)) return SteeringRange.OfRack;
        if (layout.KingpinBody(true) is null) return SteeringRange.OfPitman;
        return SteeringRange.OfWheel(linkage.Id == "lock-only" ? "each wheel" : "the wheel that turns farther, the inner one,");
    }

    private static Steering? ReadFree(MappingReader reader, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        Field turns = reader.Required("turns", "the hinge or slide that the steering moves, by its name below `joints`");
        if (geometry is null || JointOf(turns, geometry.FreeJoints) is not { } joint)
        {
            reader.AllowAll();
            return null;
        }

        bool slides = joint.Kind == FreeJointKind.Slide;
        if ((slides ? SteeringRange.OfSlide : SteeringRange.OfHinge).Read(reader) is not { } range) return null;
        draft.Assume(
            $"axles/{axle}/steering/turns",
            slides
                ? $"What is called left of the steering is {joint.SecondBody} moving towards the point `axis` of {joint.Name}."
                : $"What is called left of the steering is {joint.SecondBody} turning counterclockwise about {joint.Name}, seen from its point `axis`.");
        return new Steering("free", range.Value.Left, range.Value.Right, null) { Joint = joint.Name };
    }

    private static FreeJoint? JointOf(Field field, ImmutableArray<FreeJoint> joints)
    {
        if (field.Node is ScalarNode typed && joints.FirstOrDefault(j => j.Name == typed.Text) is { Kind: not (FreeJointKind.Hinge or FreeJointKind.Slide) } other)
        {
            FileMessages.NotSteered(field, other);
            return null;
        }

        if (field.Word([.. joints.Where(j => j.Kind is FreeJointKind.Hinge or FreeJointKind.Slide).Select(j => j.Name)]) is not { } name) return null;
        FreeJoint joint = joints.First(j => j.Name == name.Value);
        if (joint.SecondBody != Vehicle.Chassis) return joint;
        FileMessages.SteersChassis(field, joint);
        return null;
    }
}
