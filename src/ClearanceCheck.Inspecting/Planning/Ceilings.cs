using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>How far a measurement has to look: beyond the largest limit with its guard no verdict can change.</summary>
internal static class Ceilings
{
    /// <summary>The least guard over a limit, mm.</summary>
    public const double LeastGuardMm = 20;

    /// <summary>The ceiling in the quantity's unit; infinite for limits that are not lengths, whose searches are short anyway.</summary>
    public static double Of(PlannedMeasurement planned, Vehicle vehicle, double coverageFactor)
    {
        if (planned.Quantity.Unit != QuantityUnit.Millimetre || planned.Rules.Any(r => r.Limit.AtLeast is null)) return double.PositiveInfinity;
        double u = planned.Subject.Max(part => PairPlan.RoughUncertaintyMm(vehicle, part));
        return planned.Rules.Max(r => r.Limit.Number) + Math.Max(LeastGuardMm, 2 * coverageFactor * u);
    }
}
