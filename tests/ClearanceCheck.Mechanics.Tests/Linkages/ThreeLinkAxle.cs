using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>The reference axle: three links and a track bar. Invented coordinates; inputs of the table in <see cref="ThreeLinkAxleTable"/>.</summary>
internal static class ThreeLinkAxle
{
    public static readonly Vector3d HubLeft = new(0, 795, 0);
    public static readonly Vector3d HubRight = new(0, -795, 0);

    /// <param name="zero">Where the reference's zero lies in the frame used.</param>
    public static IEnumerable<Joint> Joints(Vector3d zero = default)
    {
        yield return new Joint.Rod("lower left", 0, zero + new Vector3d(-920, 430, -15), 1, zero + new Vector3d(-20, 505, -88));
        yield return new Joint.Rod("lower right", 0, zero + new Vector3d(-920, -430, -15), 1, zero + new Vector3d(-20, -505, -88));
        yield return new Joint.Rod("upper", 0, zero + new Vector3d(-705, 245, 175), 1, zero + new Vector3d(-30, 255, 138));
        yield return new Joint.Rod("track bar", 0, zero + new Vector3d(85, 470, 172), 1, zero + new Vector3d(55, -445, 83));
        yield return new Joint.Travel("left", 1, zero + HubLeft, 0, 0);
        yield return new Joint.Travel("right", 1, zero + HubRight, 1, 0);
    }

    public static Linkage Linkage() => Mechanics.Linkages.Linkage.Build(["chassis", "axle"], Joints(), 2).Linkage!;

    public static LinkageMotion Motion(double low = -120, double high = 120) => new(
        Linkage(), new PoseBox([new("left", false, low, high), new("right", false, low, high)]), []);
}
