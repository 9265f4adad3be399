using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

public sealed class MirrorTests
{
    [Fact]
    public void A_mirrored_linkage_gives_mirrored_poses()
    {
        var draws = new Draws(121);
        for (int i = 0; i < 5 * Draws.Kinds; i++)
        {
            (string[] bodies, Joint[] joints, int coordinates) = draws.Kind(i % Draws.Kinds);
            LinkageMotion motion = Draws.Motion(bodies, joints, coordinates, 80);
            LinkageMotion mirrored = Draws.Motion(bodies, [.. joints.Select(Mirrored)], coordinates, 80);
            double[] at = [.. Enumerable.Range(0, coordinates).Select(_ => draws.In(-70, 70))];

            SolvedPose pose = motion.At(at), other = mirrored.At(at);

            other.Answer.ShouldBe(pose.Answer, $"kind {i % Draws.Kinds}");
            if (!pose.IsSolved) continue;
            for (int body = 1; body < bodies.Length; body++)
                for (int k = 0; k < 4; k++)
                {
                    Vector3d point = draws.Near(-300, 0, 0, 800);
                    (other[body].Apply(Mirror(point)) - Mirror(pose[body].Apply(point))).Length.ShouldBeLessThan(1e-9);
                }
        }
    }

    private static Vector3d Mirror(Vector3d v) => new(v.X, -v.Y, v.Z);

    private static Joint Mirrored(Joint joint) => joint switch
    {
        Joint.Rod j => j with { FirstPoint = Mirror(j.FirstPoint), SecondPoint = Mirror(j.SecondPoint) },
        Joint.Ball j => j with { Point = Mirror(j.Point) },
        Joint.Hinge j => j with { Point = Mirror(j.Point), Axis = Mirror(j.Axis) },
        Joint.Travel j => j with { Point = Mirror(j.Point) },
        _ => throw new InvalidOperationException(joint.Name),
    };
}
