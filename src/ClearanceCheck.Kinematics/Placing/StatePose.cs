using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>The pose of an axle in a state in which it was measured.</summary>
public static class StatePose
{
    /// <summary>Its coordinates: both travels from hub to fender, mm; whatever else can be set stands at zero.</summary>
    /// <param name="module">The axle.</param>
    /// <param name="state">The state of its layout, or one of its others.</param>
    /// <param name="parameters">Values of the parameter vector.</param>
    /// <exception cref="ArgumentException">Nothing of the axle was measured in that state.</exception>
    public static double[] Of(AxleModule module, string state, ReadOnlySpan<double> parameters)
    {
        Axle axle = module.Axle;
        var pose = new double[module.Motion.Box.Dimensions];
        if (state == axle.MeasuredIn) (pose[0], pose[1]) = (axle.Left.MeasuredTravelMm(parameters), axle.Right.MeasuredTravelMm(parameters));
        else if (axle.OtherStates.TryGetValue(state, out AxleState? other)) (pose[0], pose[1]) = axle.TravelsIn(other, parameters);
        else throw new ArgumentException($"Nothing of the axle {axle.Name} was measured in the state {state}.", nameof(state));
        return pose;
    }
}
