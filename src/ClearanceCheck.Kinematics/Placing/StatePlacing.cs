using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>Carries points that were measured in another state than their axle's layout back to the layout's state.</summary>
/// <remarks>
/// The axle's links are solved at the travels of the point's state, hub to fender there against hub to fender at ride height. The pose
/// R of the point's body takes places as of the layout's state to those of the point's, so the place in the model is R^-1 p.
/// What comes out is a parameter vector like the one that went in, with the three numbers of each such point replaced: whoever makes
/// something of the vector needs to know nothing of states, and a change of any reading that placed a point moves the point.
/// </remarks>
public static class StatePlacing
{
    /// <summary>The values with every such point placed, or the axle that could not stand as it was measured and why.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="parameters">Values of the parameter vector as typed.</param>
    public static (ReadOnlyMemory<double> Parameters, string? Axle, MotionFault? Fault) Place(Vehicle vehicle, ReadOnlyMemory<double> parameters)
    {
        if (vehicle.StatedPoints.IsEmpty && vehicle.Axles.All(a => a.ComparedPoints.IsEmpty)) return (parameters, null, null);
        double[] placed = parameters.ToArray();
        foreach (Axle axle in vehicle.Axles)
            if (Place(vehicle, axle, parameters, placed) is { } fault) return (parameters, axle.Name, fault);
        return (placed, null, null);
    }

    private static MotionFault? Place(Vehicle vehicle, Axle axle, ReadOnlyMemory<double> parameters, double[] placed)
    {
        StatedPoint[] points = [.. vehicle.StatedPoints.Where(p => p.Axle == axle.Name)];
        string[] states = [.. points.Select(p => p.State).Concat(axle.ComparedPoints.Select(p => p.State)).Distinct().Order(StringComparer.Ordinal)];
        if (states.Length == 0) return null;
        (AxleInStates? standing, LinkageFault? links) = AxleInStates.Build(vehicle, axle, parameters);
        if (standing is null) return new MotionFault.Links(links!);
        foreach (string state in states)
            if (standing.Stand(axle.OtherStates[state]) is { } fault) return fault;
        foreach (StatedPoint point in points)
        {
            Vector3d at = standing.BodyIn(point.State, point.Body).Inverse.Apply(point.Point.At(parameters.Span));
            (placed[point.Point.X.Index], placed[point.Point.Y.Index], placed[point.Point.Z.Index]) = (at.X, at.Y, at.Z);
        }

        return null;
    }
}
