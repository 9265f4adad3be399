using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A layout nobody foresaw: its bodies and joints are spelled out in the file.</summary>
public sealed class FreeLayout : AxleLayout
{
    public override string Id => "free";

    public override string Meaning => "bodies and joints spelled out in the file";

    public override ImmutableArray<LayoutPoint> Points => [];

    public override ImmutableArray<string> Bodies(Axle axle) => axle.FreeBodies;

    public override string TravelBody(Axle axle, bool isLeft) => axle.FreeTravelBody(isLeft);

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        foreach (FreeJoint joint in places.Axle.FreeJoints)
        {
            ReadOnlySpan<double> parameters = places.Parameters.Span;
            int first = places.BodyNumber(joint.FirstBody), second = places.BodyNumber(joint.SecondBody);
            Vector3d at = joint.At[0].At(parameters);
            yield return joint.Kind switch
            {
                FreeJointKind.Rod => new Joint.Rod(joint.Name, first, at, second, joint.At[1].At(parameters)),
                FreeJointKind.Ball => new Joint.Ball(joint.Name, first, second, at),
                FreeJointKind.Hinge => new Joint.Hinge(joint.Name, first, second, at, joint.Axis!.Value.At(parameters) - at),
                FreeJointKind.Slide => new Joint.Slide(joint.Name, first, second, at, joint.Axis!.Value.At(parameters) - at),
                FreeJointKind.Spring => new Joint.Spring(joint.Name, first, at, second, joint.At[1].At(parameters), joint.Stiffness.X),
                FreeJointKind.Bushing => new Joint.Bushing(
                    joint.Name, first, second, at, Rotation.Identity, joint.Stiffness, joint.TurningStiffness, joint.RidesOnHousing),
                _ => throw new UnreachableException(),
            };
        }
    }

    /// <summary>The setting of a free axle's steering, which turns or shifts the second body of one of its joints.</summary>
    /// <param name="places">The axle's points and bodies.</param>
    /// <param name="coordinate">The number of the steering coordinate.</param>
    internal static Joint Steered(LayoutPlaces places, int coordinate)
    {
        FreeJoint moved = places.Axle.FreeJoints.First(j => j.Name == places.Axle.Steering!.Joint);
        int body = places.BodyNumber(moved.SecondBody);
        return moved.Kind == FreeJointKind.Slide ? new Joint.Shift("steering", body, coordinate, 0) : new Joint.Turn("steering", body, coordinate, 0);
    }
}
