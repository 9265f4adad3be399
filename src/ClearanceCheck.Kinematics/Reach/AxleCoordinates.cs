using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Kinematics.Reach;

/// <summary>Which coordinate of an axle's pose is which: the two travels and the steering, wherever they stand in the list.</summary>
/// <param name="Left">Place of the left wheel's travel; null when the axle has none.</param>
/// <param name="Right">Place of the right wheel's travel; null when the axle has none.</param>
/// <param name="Steer">Place of the steering angle, left positive; null for an axle that is not steered.</param>
public sealed record AxleCoordinates(int? Left, int? Right, int? Steer)
{
    public static AxleCoordinates Of(AxleModule module) => Of(module.Axle.Name, module.Motion.Box);

    /// <summary>Finds them by name: <c>rear.left</c>, <c>rear.right</c>, <c>front.steer</c>.</summary>
    public static AxleCoordinates Of(string axle, PoseBox box)
    {
        return new AxleCoordinates(Find("left", false), Find("right", false), Find("steer", true));

        int? Find(string ending, bool isAngle)
        {
            for (int d = 0; d < box.Dimensions; d++)
                if (box.Coordinates[d].Name == $"{axle}.{ending}" && box.Coordinates[d].IsAngle == isAngle) return d;
            return null;
        }
    }
}
