using System.Collections.Immutable;
using ClearanceCheck.Kinematics;

namespace ClearanceCheck.Quantities.Posed;

/// <summary>Ride height with the wheels straight ahead.</summary>
internal static class RidePose
{
    /// <summary>Every coordinate at zero, or at the end of its range that is nearest to it.</summary>
    public static ImmutableArray<double> Of(AxleModule module) => [.. module.Motion.Box.Coordinates.Select(c => Math.Clamp(0, c.Low, c.High))];
}
