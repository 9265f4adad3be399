using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>Another motion with one thing changed: to break a bound on purpose, or to punch holes into the pose space.</summary>
internal sealed class AlteredMotion(IMovingSystem inner) : IMovingSystem
{
    /// <summary>What every curvature is multiplied by.</summary>
    public double CurvatureFactor { get; init; } = 1;

    /// <summary>Gives the curvature in the chassis frame, whatever frame was asked for.</summary>
    public bool CurvatureOfTheWorld { get; init; }

    public ImmutableArray<Stop>? OtherStops { get; init; }

    /// <summary>Another answer for some poses; null keeps the pose.</summary>
    public Func<double[], SolvedPose?>? Pose { get; init; }

    /// <summary>Cells for which there is no curvature.</summary>
    public Func<DyadicCell, bool>? IsUnknown { get; init; }

    /// <summary>Cells that are proved to be out of reach.</summary>
    public Func<DyadicCell, bool>? IsOut { get; init; }

    public static SolvedPose NotSolved { get; } = new(PoseAnswerKind.NotSolved, default);

    public PoseBox Box => inner.Box;

    public ImmutableArray<Stop> Stops => OtherStops ?? inner.Stops;

    public long Solves => inner.Solves;

    public SolvedPose At(in DyadicPose pose)
    {
        if (Pose is null) return inner.At(pose);
        var values = new double[Box.Dimensions];
        Box.Values(pose, values);
        return Pose(values) ?? inner.At(pose);
    }

    public SolvedPose At(ReadOnlySpan<double> pose) => Pose?.Invoke(pose.ToArray()) ?? inner.At(pose);

    public bool IsUnreachable(in DyadicCell cell) => IsOut?.Invoke(cell) == true || inner.IsUnreachable(cell);

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => IsUnknown is null ? inner.CurvatureRegions(cell) : [cell];

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        if (IsUnknown?.Invoke(cell) == true) return CurvatureBasis.Unknown;
        CurvatureBasis basis = inner.Curvatures(cell, CurvatureOfTheWorld ? 0 : frameBody, body, anchors, perCoordinate);
        foreach (ref Curvature c in perCoordinate)
        {
            double f = CurvatureFactor;
            c = new Curvature(f * c.LowX, f * c.HighX, f * c.LowY, f * c.HighY, f * c.LowZ, f * c.HighZ, f * c.Length);
        }

        return basis;
    }
}
