using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>
/// The reference sweep's motion by formula: a solid axle on radius arms and a track bar, and a left knuckle steered about its kingpin.
/// Body 1 is the knuckle with its tire; its own coordinates are those at ride height, straight ahead. Coordinates: left travel, right
/// travel (mm), steering (rad).
/// </summary>
/// <remarks>
/// Curvature in closed form over the whole box: any tire point is within v of the kingpin point, that one within rho - v of the
/// axle's centre, and the axle's height, roll and pitch are simple functions of the travels.
/// </remarks>
internal sealed class ReferenceSweepMotion : IMovingSystem
{
    public const double TireRadiusMm = 460;
    public const double TireHalfWidthMm = 160;
    private const double HalfTrack = 780;
    private const double Kingpin = 690;
    private const double TrackBar = 850;
    private const double RadiusArm = 950;
    private static readonly Vector3d KingpinAxis = new(-0.0690808640363966, -0.1388406252737597, 0.98790238130980146);

    private readonly double curvatureFactor;
    private long solves;

    public ReferenceSweepMotion(double curvatureFactor = 1) => this.curvatureFactor = curvatureFactor;

    public static Vector3d TireCentre { get; } = new(0, HalfTrack, 0);

    public PoseBox Box { get; } = new(
    [
        new PoseCoordinate("left", false, -130, 110),
        new PoseCoordinate("right", false, -130, 110),
        new PoseCoordinate("steer", true, -35 * Math.PI / 180, 35 * Math.PI / 180),
    ]);

    public ImmutableArray<Stop> Stops { get; init; } = [];

    public long Solves => solves;

    public SolvedPose At(in DyadicPose pose)
    {
        Span<double> values = stackalloc double[3];
        Box.Values(pose, values);
        return At(values);
    }

    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        solves++;
        double h = (pose[0] + pose[1]) / 2, roll = Math.Asin((pose[0] - pose[1]) / (2 * HalfTrack)), pitch = -Math.Asin(h / RadiusArm);
        Vector3d centre = new(Math.Sqrt((RadiusArm * RadiusArm) - (h * h)) - RadiusArm, Math.Sqrt((TrackBar * TrackBar) - (h * h)) - TrackBar, h);
        var axle = new RigidMotion(Rotation.About(Vector3d.UnitX, roll) * Rotation.About(Vector3d.UnitY, pitch), centre);
        Vector3d pivot = new(0, Kingpin, 0);
        Rotation turn = Rotation.About(KingpinAxis, pose[2]);
        var knuckle = new RigidMotion(turn, pivot - turn.Apply(pivot));
        return new SolvedPose(PoseAnswerKind.Solved, new[] { RigidMotion.Identity, axle * knuckle });
    }

    public bool IsUnreachable(in DyadicCell cell) => false;

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => [DyadicCell.Whole(3)];

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        double v = 0;
        foreach (Vector3d anchor in anchors) v = Math.Max(v, (anchor - new Vector3d(0, Kingpin, 0)).Length);
        double hm = 130, um = 240 / (2 * HalfTrack), rho = Kingpin + v, w2 = 2 * HalfTrack;
        double f1 = 1 / (w2 * Math.Sqrt(1 - (um * um))), f2 = um / (w2 * w2 * Math.Pow(1 - (um * um), 1.5));
        double q = (RadiusArm * RadiusArm) - (hm * hm), t1 = 0.5 / Math.Sqrt(q), t2 = 0.25 * hm / Math.Pow(q, 1.5);
        double bend = 0.25 * Math.Sqrt(Square(Bend(RadiusArm, hm)) + Square(Bend(TrackBar, hm)));
        double travel = bend + (rho * ((f1 * f1) + f2)) + (v * ((2 * f1 * t1) + (t1 * t1) + t2));
        perCoordinate[0] = perCoordinate[1] = Curvature.Ball(travel * curvatureFactor);
        perCoordinate[2] = Curvature.Ball(v * curvatureFactor);
        return CurvatureBasis.Enclosed;
    }

    // Second derivative of sqrt(L^2 - h^2).
    private static double Bend(double length, double h) => length * length / Math.Pow((length * length) - (h * h), 1.5);

    private static double Square(double x) => x * x;
}
