using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>The reference sweep with a fourth coordinate: the axle winds up by -3 to 3 degrees, added to its pitch.</summary>
internal sealed class WindupSweepMotion : IMovingSystem
{
    private readonly ReferenceSweepMotion reference = new();

    public WindupSweepMotion() =>
        Box = new PoseBox(reference.Box.Coordinates.Add(new PoseCoordinate("wind-up", true, -3 * Math.PI / 180, 3 * Math.PI / 180)));

    public PoseBox Box { get; }

    public ImmutableArray<Stop> Stops => [];

    public long Solves => reference.Solves;

    public SolvedPose At(in DyadicPose pose)
    {
        Span<double> values = stackalloc double[4];
        Box.Values(pose, values);
        return At(values);
    }

    // Straight ahead the knuckle is the axle; at ride height it is the steering alone.
    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        RigidMotion axle = reference.At([pose[0], pose[1], 0])[1], steering = reference.At([0, 0, pose[2]])[1];
        var windup = new RigidMotion(Rotation.About(Vector3d.UnitY, pose[3]), Vector3d.Zero);
        return new SolvedPose(PoseAnswerKind.Solved, new[] { RigidMotion.Identity, axle * windup * steering });
    }

    public bool IsUnreachable(in DyadicCell cell) => false;

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => [DyadicCell.Whole(4)];

    // The axis of the wind-up goes through the kingpin point, as the steering's does: no point is farther from either.
    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        CurvatureBasis basis = reference.Curvatures(cell, frameBody, body, anchors, perCoordinate[..3]);
        perCoordinate[3] = perCoordinate[2];
        return basis;
    }
}
