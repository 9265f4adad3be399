using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>How far a measurement has to look: beyond the largest limit with its guard no verdict can change.</summary>
internal static class Ceilings
{
    /// <summary>The least guard over a limit, mm.</summary>
    public const double LeastGuardMm = 20;

    /// <summary>The ceiling in the quantity's unit; infinite for limits that are not lengths, whose searches are short anyway.</summary>
    public static double Of(PlannedMeasurement planned, Vehicle vehicle, double coverageFactor) =>
        IsLength(planned) ? Limits(planned).Max() + Guard(planned, vehicle, coverageFactor) : double.PositiveInfinity;

    /// <summary>An overlap this deep, under the smallest limit too, settles every rule: how much deeper it goes need not be looked for. Minus infinity for limits that are not lengths.</summary>
    public static double Floor(PlannedMeasurement planned, Vehicle vehicle, double coverageFactor) =>
        IsLength(planned) ? Math.Min(0, Limits(planned).Min()) - Guard(planned, vehicle, coverageFactor) : double.NegativeInfinity;

    /// <summary>How near the least other narrow places must be kept: all that a shield has to stand in, where one may lower the limit.</summary>
    public static double? Reach(PlannedMeasurement planned) =>
        IsLength(planned) && planned.Rules.Any(r => r.Rule.Cases.Any(c => c.When.Contains(RuleFacts.Shielded))) ? Limits(planned).Max() : null;

    private static bool IsLength(PlannedMeasurement planned) =>
        planned.Quantity.Unit == QuantityUnit.Millimetre && planned.Rules.All(r => r.Limit is { OfPart: not null } or { AtLeast: not null, AtMost: null });

    // A limit that nothing is known of asks for nothing.
    private static IEnumerable<double> Limits(PlannedMeasurement planned) => planned.Rules.Where(r => r.Missing is null).Select(r => r.Limit.Number).DefaultIfEmpty(0);

    private static double Guard(PlannedMeasurement planned, Vehicle vehicle, double coverageFactor)
    {
        double u = planned.Subject.Max(part => PairPlan.RoughUncertaintyMm(vehicle, part));
        return Math.Max(LeastGuardMm, 2 * coverageFactor * u);
    }
}
