using System.Diagnostics;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Subspaces;

/// <summary>The other side of a stop: what keeps a pose on it.</summary>
public static class HeldStop
{
    /// <summary>A stop whose reserve is what the given one may still have, less what it has: poses with both reserves at zero or more lie within the give of the stop.</summary>
    /// <param name="stop">A stop.</param>
    /// <param name="giveMm">How far from it a pose still counts as on it, mm.</param>
    public static Stop Of(Stop stop, double giveMm) => stop switch
    {
        LongestStop s => new ShortestStop(s.Name, s.FirstBody, s.FirstPoint, s.SecondBody, s.SecondPoint, s.LongestMm - giveMm),
        ShortestStop s => new LongestStop(s.Name, s.FirstBody, s.FirstPoint, s.SecondBody, s.SecondPoint, s.ShortestMm + giveMm),
        HeightStop s => s with { Axis = -s.Axis, LeastMm = -(s.LeastMm + giveMm) },
        _ => throw new UnreachableException(),
    };
}
