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

    public override IEnumerable<Joint> Joints(Axle axle, ReadOnlyMemory<double> parameters, Func<string, int> bodyNumber)
    {
        foreach (FreeJoint joint in axle.FreeJoints)
        {
            int first = bodyNumber(joint.FirstBody), second = bodyNumber(joint.SecondBody);
            Vector3d at = joint.At[0].At(parameters.Span);
            yield return joint.Kind switch
            {
                FreeJointKind.Rod => new Joint.Rod(joint.Name, first, at, second, joint.At[1].At(parameters.Span)),
                FreeJointKind.Ball => new Joint.Ball(joint.Name, first, second, at),
                FreeJointKind.Hinge => new Joint.Hinge(joint.Name, first, second, at, joint.Axis!.Value.At(parameters.Span) - at),
                _ => throw new UnreachableException(),
            };
        }
    }
}
