using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>An axle as it stood in the states in which it was measured: its links alone, without what is hung on it.</summary>
internal sealed class AxleInStates
{
    private readonly AxleModule module;
    private readonly ReadOnlyMemory<double> parameters;
    private readonly SortedDictionary<string, SolvedPose> poses = new(StringComparer.Ordinal);

    private AxleInStates(AxleModule module, ReadOnlyMemory<double> parameters) => (this.module, this.parameters) = (module, parameters);

    /// <summary>The axle, or why its links don't make it move.</summary>
    public static (AxleInStates? Axle, LinkageFault? Fault) Build(Vehicle vehicle, Axle axle, ReadOnlyMemory<double> parameters)
    {
        // The wheels stand straight ahead in a state, so how far they steer needs not be found out.
        // Stops and what follows two points hang on the very places that are looked for, and change nothing of how the links stand.
        (AxleModule? module, LinkageFault? fault) = AxleModuleBuilder.Build(vehicle with { Parts = [] }, axle, parameters, AxleBox.SteeringAsTyped(axle));
        return module is null ? (null, fault) : (new AxleInStates(module, parameters), null);
    }

    /// <summary>Solves a state; null when it stands, else why it can't.</summary>
    public MotionFault.StateOutOfReach? Stand(AxleState state)
    {
        double[] pose = StatePose.Of(module, state.State, parameters.Span);
        SolvedPose solved = module.Motion.At((ReadOnlySpan<double>)pose);
        if (!solved.IsSolved) return new MotionFault.StateOutOfReach(state.State, pose[0], pose[1]);
        poses[state.State] = solved;
        return null;
    }

    /// <summary>Where a body stood in a state that has been solved: it takes places as of the layout's state to those of this one.</summary>
    public RigidMotion BodyIn(string state, string body) => poses[state][module.Bodies.IndexOf(body)];
}
