using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Tests.Reach;

/// <summary>An axle in the plane by a formula: its middle goes straight up and down, and it tilts about it. Hubs at y +-780; body 1 is the axle, with its line on z = 0.</summary>
internal sealed class TiltingAxle(PoseBox box, ImmutableArray<Stop> stops) : IMovingSystem
{
    public const double HalfTrack = 780;

    public PoseBox Box => box;

    public ImmutableArray<Stop> Stops => stops;

    public long Solves => 0;

    public static PoseCoordinate Left(double range = 400) => new("rear.left", false, -range, range);

    public static PoseCoordinate Right(double range = 400) => new("rear.right", false, -range, range);

    public SolvedPose At(in DyadicPose pose) => throw new NotSupportedException();

    // A fourth coordinate is carried along and moves nothing; one that is an angle turns body 2, a knuckle at the left hub.
    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        double left = pose[0], right = pose[1], sine = (left - right) / (2 * HalfTrack);
        if (Math.Abs(sine) >= 1) return new SolvedPose(PoseAnswerKind.NotSolved, default);
        var axle = new RigidMotion(Rotation.About(Vector3d.UnitX, Math.Asin(sine)), new(0, 0, (left + right) / 2));
        double steer = box.Dimensions > 2 ? pose[2] : 0;
        var pivot = new Vector3d(0, 700, 0);
        var turn = Rotation.About(Vector3d.UnitZ, steer);
        return new SolvedPose(PoseAnswerKind.Solved, new[] { RigidMotion.Identity, axle, axle * new RigidMotion(turn, pivot - turn.Apply(pivot)) });
    }

    public bool IsUnreachable(in DyadicCell cell) => throw new NotSupportedException();

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => throw new NotSupportedException();

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate) => throw new NotSupportedException();
}
