using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>The vehicle as it stood in a state, with any parameter values: what was read there has its computed value there.</summary>
internal sealed class StatePoses
{
    private readonly string state;
    private readonly SolvedPose? nominal;

    private StatePoses(string state, Snapshot asMeasured)
    {
        (this.state, AsMeasured, nominal) = (state, asMeasured, asMeasured.Pose);
    }

    /// <summary>The state with the parameters as measured.</summary>
    public Snapshot AsMeasured { get; }

    /// <summary>Its coordinates with the parameters as measured; empty when nothing moves.</summary>
    public double[] Pose => AsMeasured.Module is { } module ? StatePose.Of(module, state, AsMeasured.Parameters.Span) : [];

    /// <summary>Null when the axle can't be solved there.</summary>
    public static StatePoses? Of(VehicleMotion motion, AxleModule? module, string state)
    {
        if (module is null) return new StatePoses(state, new Snapshot(motion.Parameters, null, null));
        SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)StatePose.Of(module, state, motion.Parameters.Span));
        return solved.IsSolved ? new StatePoses(state, new Snapshot(motion.Parameters, module, solved)) : null;
    }

    /// <summary>The state with a snapshot's parameters; null when it can't be solved.</summary>
    public Snapshot? With(Snapshot at)
    {
        if (at.Module is not { } module) return at;
        if (at.Parameters.Equals(AsMeasured.Parameters)) return AsMeasured;
        SolvedPose solved = module.Motion.Near(nominal!.Bodies.Span, StatePose.Of(module, state, at.Parameters.Span));
        return solved.IsSolved ? new Snapshot(at.Parameters, module, solved) : null;
    }
}
