using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>A driveshaft with the pieces before it, from the output that drives on.</summary>
/// <param name="Pieces">From the output on; the last is the shaft itself.</param>
/// <param name="IsFollowed">Whether the shaft ends in a centre bearing and another follows.</param>
/// <param name="MeasuredMm">From joint centre to joint centre as it was measured, mm; null where the state in which that was could not be solved.</param>
/// <param name="Splines">Length and engaged length as measured, mm; null where nobody measured them.</param>
public sealed record ShaftLine(ImmutableArray<ShaftPiece> Pieces, bool IsFollowed, double? MeasuredMm, (double LengthMm, double EngagedMm)? Splines)
{
    /// <summary>The line that ends with a shaft.</summary>
    /// <param name="module">The axle that it leads to.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="part">A shaft.</param>
    /// <param name="parameters">The parameter values that the axle was made with.</param>
    public static ShaftLine Of(AxleModule module, Vehicle vehicle, Part part, ReadOnlySpan<double> parameters)
    {
        var pieces = ImmutableArray.CreateBuilder<ShaftPiece>();
        foreach (Part each in PartsTo(vehicle, part)) pieces.Add(ShaftPiece.Of(module, (PartForm.Shaft)each.Form, parameters));
        ShaftPiece last = pieces[^1];
        return new ShaftLine(
            pieces.ToImmutable(),
            vehicle.Parts.Any(p => p.Form is PartForm.Shaft other && other.After == part.Id),
            Measured(module, vehicle, last, parameters),
            last.Shaft.Splines is { } splines ? (splines.Length.At(parameters), splines.Engaged.At(parameters)) : null);
    }

    /// <summary>A shaft and those before it, from the output on.</summary>
    public static ImmutableArray<Part> PartsTo(Vehicle vehicle, Part part)
    {
        var parts = new List<Part> { part };
        while (parts[^1].Form is PartForm.Shaft { After: { } before } && vehicle.Parts.FirstOrDefault(p => p.Id == before) is { } piece && !parts.Contains(piece))
            parts.Add(piece);
        parts.Reverse();
        return [.. parts];
    }

    /// <summary>The shaft in a solved pose.</summary>
    public ShaftPose At(SolvedPose pose)
    {
        ShaftPiece last = Pieces[^1];
        // Directions along the whole line: the output, each piece, what the last one drives.
        Vector3d?[] axes = [Pieces[0].FirstAxisIn(pose), .. Pieces.Select(p => (Vector3d?)p.Line(pose)), last.SecondAxisIn(pose)];
        ShaftJointKind[] kinds = [.. Pieces.Select(p => p.Shaft.FirstEnd.Joint), last.Shaft.SecondEnd.Joint];
        double length = last.Line(pose).Length;
        double? slip = length - MeasuredMm;
        return new ShaftPose(
            new JointBend(kinds[^2], Angle(axes[^3], axes[^2])),
            IsFollowed ? null : new JointBend(kinds[^1], Angle(axes[^2], axes[^1])),
            length,
            slip,
            Splines is var (spline, engaged) && slip is { } longer ? SplineEngagement.Of(spline, engaged, longer) : null,
            IsFollowed ? null : Nonuniformity.EquivalentRad(axes, kinds, [.. Pieces.Select(p => p.Shaft.PhaseRad)]));
    }

    private static double? Angle(Vector3d? before, Vector3d? after) => before is { } a && after is { } b ? JointGeometry.Between(a, b) : null;

    // Where the axle's end was measured in another state than the axle's layout, the ends were as far apart as in that state.
    private static double? Measured(AxleModule module, Vehicle vehicle, ShaftPiece piece, ReadOnlySpan<double> parameters)
    {
        MeasuredPoint first = piece.Shaft.First.At, second = piece.Shaft.Second.At;
        if (vehicle.StatedPoints.FirstOrDefault(p => p.Point == first || p.Point == second) is not { } stated) return (piece.To - piece.From).Length;
        SolvedPose pose = module.Motion.At((ReadOnlySpan<double>)StatePose.Of(module, stated.State, parameters));
        return pose.IsSolved ? piece.Line(pose).Length : null;
    }
}
