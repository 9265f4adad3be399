using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>A leaf-sprung axle against an independent integration of its two beams.</summary>
public sealed class LeafSpringTests
{
    [Theory]
    [InlineData(-100)]
    [InlineData(-60)]
    [InlineData(-25)]
    [InlineData(35)]
    [InlineData(70)]
    [InlineData(100)]
    public void The_axle_goes_where_two_beams_of_uniform_strength_let_it(double travel)
    {
        (AxleModule module, double[] parameters) = Samples.Of("leaf-springs").Module();
        SolvedPose pose = module.Motion.At([travel, travel]);
        BeamPair beams = BeamPair.Of(module, parameters);

        (double x, double pitch) = beams.Settle(travel, 0);

        RigidMotion axle = pose[module.Bodies.IndexOf("front/axle")];
        Vector3d hub = module.Axle.Left.Hub.At(parameters);
        (axle.Apply(hub) - hub).X.ShouldBe(x, 0.5);
        (axle.Apply(hub) - hub).Z.ShouldBe(travel, 1e-9);
        axle.Rotation.ToRotationVector().Y.ShouldBe(pitch, 0.004);
    }

    [Theory]
    [InlineData(-90)]
    [InlineData(60)]
    [InlineData(100)]
    public void The_leaf_takes_the_shape_of_the_beam(double travel)
    {
        (AxleModule module, double[] parameters) = Samples.Of("leaf-springs").Module();
        SolvedPose pose = module.Motion.At([travel, travel]);
        BeamPair beams = BeamPair.Of(module, parameters);
        beams.Settle(travel, 0);
        int body = module.Bodies.IndexOf("front/axle");
        Joint.Leaf leaf = module.Motion.Linkage.Joints.OfType<Joint.Leaf>().First();

        foreach ((double share, Vector3d beam) in beams.FixedHalf())
        {
            Vector3d arc = LeafShape.At(leaf, pose.Bodies.Span, share);

            (arc - beam).Length.ShouldBeLessThan(2.5, $"at {share} of the leaf");
        }

        // Its end is the eye itself, which stands on the frame.
        (LeafShape.At(leaf, pose.Bodies.Span, 1) - leaf.Eye).Length.ShouldBeLessThan(1e-6);
        (LeafShape.At(leaf, pose.Bodies.Span, 0) - pose[body].Apply(leaf.Clamp)).Length.ShouldBeLessThan(1e-9);
    }

    [Theory]
    [InlineData(-0.04)]
    [InlineData(0.03)]
    [InlineData(0.08)]
    public void Wind_up_bends_one_half_up_and_the_other_down(double wrap)
    {
        (AxleModule module, double[] parameters) = Samples.Of("leaf-springs", wraps: true).Module();
        int body = module.Bodies.IndexOf("front/axle");
        SolvedPose free = module.Motion.At([0, 0, 0]), wound = module.Motion.At([0, 0, wrap]);
        double turned = wound[body].Rotation.ToRotationVector().Y - free[body].Rotation.ToRotationVector().Y;

        // The coordinate is the torque for so much wind-up of springs whose ends stand still; a shackle lets it go a little farther.
        Math.Sign(turned).ShouldBe(Math.Sign(wrap));
        (turned / wrap).ShouldBeInRange(0.8, 1.6);
        LinkageLoads loads = LinkageLoads.Of(module.Motion.Linkage, wound.Bodies.Span, [0, 0, wrap]);
        double[] rises = [.. loads.Soft.Select(s => s.GiveMm.Z)];
        Math.Sign(rises[0]).ShouldBe(-Math.Sign(rises[1]));
        (_, double pitch) = BeamPair.Of(module, parameters).Settle(0, wrap);
        turned.ShouldBe(pitch, 0.12 * Math.Abs(wrap));
    }
}
