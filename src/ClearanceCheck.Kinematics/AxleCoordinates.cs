using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics;

/// <summary>Which coordinate of an axle's pose is which: the two travels, the steering and the wind-up, wherever they stand in the list.</summary>
/// <param name="Left">Place of the left wheel's travel; null when the axle has none.</param>
/// <param name="Right">Place of the right wheel's travel; null when the axle has none.</param>
/// <param name="Steer">Place of the steering, left positive: an angle, or the way of a rack; null for an axle that is not steered.</param>
/// <param name="Wrap">Place of the wind-up on the springs; null where it is not looked at.</param>
public sealed record AxleCoordinates(int? Left, int? Right, int? Steer, int? Wrap)
{
    internal const string LeftEnding = "left", RightEnding = "right", SteerEnding = "steer", WrapEnding = "wrap";

    public static AxleCoordinates Of(AxleModule module) => Of(module.Axle.Name, module.Motion.Box);

    /// <summary>Finds them by name: <c>rear.left</c>, <c>rear.right</c>, <c>front.steer</c>, <c>rear.wrap</c>.</summary>
    public static AxleCoordinates Of(string axle, PoseBox box)
    {
        return new AxleCoordinates(Find(LeftEnding), Find(RightEnding), Find(SteerEnding), Find(WrapEnding));

        int? Find(string ending)
        {
            for (int d = 0; d < box.Dimensions; d++)
                if (box.Coordinates[d].Name == $"{axle}.{ending}") return d;
            return null;
        }
    }
}
