using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities;

/// <summary>What to measure.</summary>
/// <param name="Motion">The vehicle in motion, with its parameters as measured.</param>
/// <param name="First">The part, or the first of a pair.</param>
/// <param name="Second">The second of a pair.</param>
/// <param name="Ceiling">In the quantity's unit: beyond this no rule asks, guard included. Infinite for none.</param>
public sealed record MeasureRequest(VehicleMotion Motion, Part First, Part? Second, double Ceiling)
{
    /// <summary>Give or take is two standard uncertainties unless somebody says otherwise.</summary>
    public const double UsualCoverageFactor = 2;

    /// <summary>The poses that are looked at.</summary>
    public PoseSet Over { get; init; } = PoseSet.AllPoses;

    /// <summary>In mm: a gap found at or below this settles every rule, and the search need not look for the deepest.</summary>
    public double FloorMm { get; init; } = double.NegativeInfinity;

    /// <summary>In mm: other narrow places within this of the least are kept; null to take it from the parts' uncertainty.</summary>
    public double? ReachMm { get; init; }

    /// <summary>True when a pair that the first look puts beyond the ceiling needs no propagation: its give or take is then the guard's.</summary>
    public bool IsRoughBeyondCeiling { get; init; }

    /// <summary>Give or take is this many standard uncertainties.</summary>
    public double CoverageFactor { get; init; } = UsualCoverageFactor;

    /// <summary>The search is narrowed until value and bound are this near, mm; null to take it from the parts' uncertainty.</summary>
    public double? ToleranceMm { get; init; }
}
