using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Driveline;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.JointAngles;

/// <summary>A shaft with what moves it.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Part">The shaft.</param>
/// <param name="Module">What moves it; null when both ends stand on the chassis.</param>
/// <param name="Piece">The shaft with the numbers as measured.</param>
/// <param name="Before">The shaft before it, where it begins at a centre bearing.</param>
/// <param name="IsFollowed">True where it ends at a centre bearing.</param>
/// <param name="Parts">It and the shafts before it.</param>
internal sealed record ShaftPlan(
    Vehicle Vehicle, Part Part, AxleModule? Module, ShaftPiece Piece, ShaftPiece? Before, bool IsFollowed, ImmutableArray<Part> Parts)
{
    /// <summary>Null when the shaft and those before it ride on two axles.</summary>
    public static ShaftPlan? Of(VehicleMotion motion, Part part)
    {
        ImmutableArray<Part> parts = ShaftLine.PartsTo(motion.Vehicle, part);
        string[] bodies = [.. parts.SelectMany(p => p.Form.Ends).Select(e => e.Body)];
        if (PairPlan.For(motion, bodies) is not { } plan) return null;
        AxleModule any = plan.Module ?? motion.Modules[0];
        ReadOnlySpan<double> parameters = motion.Parameters.Span;
        ShaftLine line = ShaftLine.Of(any, motion.Vehicle, part, parameters);
        return new ShaftPlan(motion.Vehicle, part, plan.Module, line.Pieces[^1], line.Pieces.Length > 1 ? line.Pieces[^2] : null, line.IsFollowed, parts) { AnyModule = any };
    }

    /// <summary>An axle's bodies are counted by it; of a shaft on the chassis alone any axle's will do.</summary>
    public required AxleModule AnyModule { get; init; }

    /// <summary>The shaft in one pose.</summary>
    public ShaftPose? At(Snapshot at)
    {
        AxleModule module = at.Module ?? AnyModule;
        SolvedPose pose = at.Pose ?? Standing(module);
        return ShaftLine.Of(module, Vehicle, Part, at.Parameters.Span).At(pose);
    }

    /// <summary>What to measure where a flange's direction is missing.</summary>
    public static string NoAxis(Part part, string end) =>
        $"which way the flange at the {end} end of {part.Name} points is not in the file: measure a second point on its axis and type it as `ahead` of that joint";

    private static SolvedPose Standing(AxleModule module)
    {
        var bodies = new Geometry.RigidMotion[module.Bodies.Length];
        Array.Fill(bodies, Geometry.RigidMotion.Identity);
        return new SolvedPose(PoseAnswerKind.Solved, bodies);
    }
}
