using ClearanceCheck.Kinematics;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>Which module moves two parts against each other, and how finely to search.</summary>
/// <param name="Module">Null when they never move against each other.</param>
public sealed record PairPlan(AxleModule? Module)
{
    /// <summary>Places two parts in one module; null when they ride on two axles, which no module holds together yet.</summary>
    public static PairPlan? For(VehicleMotion motion, Part first, Part second) =>
        For(motion, [.. motion.CarriersOf(first), .. motion.CarriersOf(second)]);

    /// <summary>Places bodies in one module.</summary>
    public static PairPlan? For(VehicleMotion motion, params IReadOnlyList<string> bodies)
    {
        AxleModule? module = null;
        var numbers = new HashSet<int>();
        foreach (string body in bodies)
        {
            (AxleModule? own, int number) = motion.Find(body);
            if (own is not null && module is not null && own != module) return null;
            module ??= own;
            numbers.Add(number);
        }

        return new PairPlan(numbers.Count > 1 ? module : null);
    }

    /// <summary>Settings of the search: narrow where the readings are fine, coarse where they are coarse.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="ceilingMm">The ceiling in mm.</param>
    public static SweepSettings Settings(MeasureRequest request, double ceilingMm)
    {
        double u = RoughUncertaintyMm(request.Motion.Vehicle, request.First);
        if (request.Second is not null)
        {
            double other = RoughUncertaintyMm(request.Motion.Vehicle, request.Second);
            u = Math.Sqrt((u * u) + (other * other));
        }

        return new SweepSettings
        {
            ToleranceMm = request.ToleranceMm ?? Math.Clamp(u / 5, 0.1, 1.0),
            CeilingMm = ceilingMm,
            LooksOnceBeyondCeiling = request.IsRoughBeyondCeiling,
            ReachMm = request.ReachMm ?? Math.Max(2, 2 * request.CoverageFactor * u),
        };
    }

    /// <summary>The largest standard uncertainty of a part's readings, mm.</summary>
    public static double RoughUncertaintyMm(Vehicle vehicle, Part part) =>
        ParameterUse.Of(vehicle, [part]).Select(i => vehicle.Parameters.Parameters[i].StandardUncertaintyMm).DefaultIfEmpty(0).Max();
}
