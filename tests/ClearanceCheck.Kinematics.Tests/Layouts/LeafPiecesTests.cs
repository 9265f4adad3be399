using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>The rigid pieces of a leaf spring against two beams that are integrated along their length.</summary>
public sealed class LeafPiecesTests
{
    [Theory]
    [InlineData(-90)]
    [InlineData(-40)]
    [InlineData(0)]
    [InlineData(55)]
    [InlineData(100)]
    public void With_their_give_they_hold_the_beam(double travel)
    {
        (AxleModule plain, double[] parameters) = Samples.Of("leaf-springs").Module();
        Joint.Leaf leaf = plain.Motion.Linkage.Joints.OfType<Joint.Leaf>().First();
        LeafPiece[] pieces = [.. Enumerable.Range(0, LeafPiece.Count).Select(i => new LeafPiece($"piece {i}", leaf, i))];
        var motion = new LinkageMotion(plain.Motion.Linkage, plain.Motion.Box, [], [.. pieces]);
        SolvedPose pose = motion.At([travel, travel]);
        BeamPair beams = BeamPair.Of(plain, parameters);
        beams.Settle(travel, 0);
        int held = 0;

        // The beam itself has no thickness: all that is left around it is the give and what the box adds.
        foreach ((double share, Vector3d beam) in beams.FixedHalf()) held += pieces.Index().Any(p => Holds(p.Item, pose[plain.Bodies.Length + p.Index], beam)) ? 1 : 0;

        held.ShouldBe(11);
    }

    private static bool Holds(LeafPiece piece, RigidMotion at, Vector3d point)
    {
        (Vector3d middle, Vector3d along, Vector3d across, Vector3d up) = piece.Measured;
        LeafPieceBox box = piece.Box(0, Defaults.LeafShapeMm, Defaults.LeafShapeMm);
        Vector3d arm = at.Inverse.Apply(point) - middle;
        double x = Vector3d.Dot(arm, along), y = Vector3d.Dot(arm, across), z = Vector3d.Dot(arm, up);
        return Math.Abs(x) <= box.HalfAlongMm && Math.Abs(y) <= box.HalfAcrossMm && z >= -box.DownMm && z <= box.UpMm;
    }
}
