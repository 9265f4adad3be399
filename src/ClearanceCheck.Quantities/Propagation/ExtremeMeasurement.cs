using System.Collections.Immutable;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>Turns an extreme of the sweep into a quantity's measurement: units, uncertainty at every place, faults in words.</summary>
internal static class ExtremeMeasurement
{
    private const string NoPropagation = "a pose beside the worst one could not be solved, so its give or take is not known";

    /// <param name="request">What was asked.</param>
    /// <param name="plan">What moves the parts.</param>
    /// <param name="extreme">What the sweep found.</param>
    /// <param name="parts">The parts that the value depends on.</param>
    /// <param name="convert">From the sweep's mm to the quantity's unit.</param>
    /// <param name="value">The value to be made least, in a pose with given parameters, near where it was seen.</param>
    /// <param name="also">Numbers that the value depends on beside those of the parts.</param>
    /// <param name="subsets">For each basin what was held where it was found; nothing where left out.</param>
    /// <param name="isKinked">See <see cref="PosePropagation.At"/>.</param>
    public static Measurement Of(
        MeasureRequest request, PairPlan plan, Extreme extreme, IReadOnlyList<Part> parts, Func<double, double> convert, Func<Snapshot, Basin, double> value,
        IEnumerable<int>? also = null, ImmutableArray<PoseSubset> subsets = default, bool isKinked = false)
    {
        var none = new Measurement { Cells = extreme.Cells, Module = plan.Module };
        if (Fault(extreme) is { } fault) return none with { NotEvaluated = fault };
        if (extreme.RefusedAtRoot && request.IsRoughBeyondCeiling) return Rough(request, none, extreme, parts, convert);
        var propagation = new PosePropagation(request.Motion, plan.Module);
        var places = ImmutableArray.CreateBuilder<WorstPlace>();
        for (int i = 0; i < extreme.Basins.Length; i++)
        {
            Basin basin = extreme.Basins[i];
            if (propagation.At(parts, basin.Pose, at => value(at, basin), also, subsets.IsDefaultOrEmpty ? null : subsets[i], isKinked) is not { } u) return none with { NotEvaluated = NoPropagation };
            places.Add(new WorstPlace(
                convert(basin.Value), basin.Pose, basin.Witness.OnFirst, basin.Witness.OnSecond, u.StandardUncertainty, u.Shares, u.ActiveStops, u.EndsAtNoStop));
        }

        return none with
        {
            Value = convert(extreme.Value),
            Bound = convert(extreme.Bound),
            Grade = extreme.Grade,
            Places = places.ToImmutable(),
            RefusedAtRoot = extreme.RefusedAtRoot,
            BudgetSpent = extreme.BudgetSpent,
        };
    }

    // Beyond the ceiling no verdict hangs on the give or take, and 2 k u of the coarsest reading is inside the ceiling's guard.
    private static Measurement Rough(MeasureRequest request, Measurement none, Extreme extreme, IReadOnlyList<Part> parts, Func<double, double> convert)
    {
        double u = parts.Max(part => PairPlan.RoughUncertaintyMm(request.Motion.Vehicle, part));
        return none with
        {
            Value = convert(extreme.Value),
            Bound = convert(extreme.Bound),
            Grade = extreme.Grade,
            Places = [.. extreme.Basins.Take(1).Select(b => new WorstPlace(convert(b.Value), b.Pose, b.Witness.OnFirst, b.Witness.OnSecond, u, [], [], false))],
            RefusedAtRoot = true,
        };
    }

    // NaN compares false with everything, so each value is asked for being finite before any verdict sees it.
    private static string? Fault(Extreme extreme)
    {
        if (extreme.UnsolvedRegions > 0) return "the motion could not be solved in part of the travel: nothing is known of the parts there";
        if (extreme.Basins.IsEmpty || !double.IsFinite(extreme.Value)) return "no reachable pose was found: the stops leave no travel";
        return double.IsFinite(extreme.Bound) ? null : "no bound was found";
    }
}
