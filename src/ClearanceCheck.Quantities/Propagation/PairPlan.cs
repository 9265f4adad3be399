using ClearanceCheck.Kinematics;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>Which module moves two places against each other, under which body numbers, and how finely to search.</summary>
/// <param name="Module">Null when they never move against each other.</param>
public sealed record PairPlan(AxleModule? Module, int FirstBody, int SecondBody)
{
    /// <summary>Places two bodies in one module; null when they ride on two axles, which no module holds together yet.</summary>
    public static PairPlan? For(VehicleMotion motion, string firstBody, string secondBody)
    {
        (AxleModule? first, int a) = motion.Find(firstBody);
        (AxleModule? second, int b) = motion.Find(secondBody);
        if (first is not null && second is not null && first != second) return null;
        AxleModule? module = first ?? second;
        return a == b ? new PairPlan(null, a, b) : new PairPlan(module, a, b);
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
            ReachMm = Math.Max(2, 2 * request.CoverageFactor * u),
        };
    }

    /// <summary>The largest standard uncertainty of a part's readings, mm.</summary>
    public static double RoughUncertaintyMm(Vehicle vehicle, Part part) =>
        ParameterUse.Of(part).Select(i => vehicle.Parameters.Parameters[i].StandardUncertaintyMm).DefaultIfEmpty(0).Max();
}
