using ClearanceCheck.Geometry;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>How stiff rubber and springs are taken to be. Guesses, common practice without a source: what they decide is how a load is shared, seldom by more than a few mm.</summary>
public static class SoftDefaults
{
    /// <summary>A link along its length, both of its bushings in series, N/mm.</summary>
    public const double LinkNPerMm = 8000;

    /// <summary>Rate of a leaf spring, N/mm; only its share against what holds the axle sideways counts.</summary>
    public const double LeafRateNPerMm = 35;

    /// <summary>What holds each eye of a leaf spring sideways, N/mm.</summary>
    public const double LeafSidewaysNPerMm = 250;

    /// <summary>A bushing of a radius arm across its bolt (x, z) and along it (y), N/mm.</summary>
    public static Vector3d ArmBushingNPerMm => new(5000, 1300, 5000);

    /// <summary>The frame's bushing of a radius arm, N mm/rad: it twists easily about its bolt (y).</summary>
    public static Vector3d ArmTurningNmmPerRad => new(5e6, 2e5, 3e6);
}
