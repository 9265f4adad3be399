using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Sweeping.Subspaces;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>Standard uncertainty of a least value at its pose, from the uncertainty of every reading it depends on.</summary>
/// <remarks>
/// The law of propagation (JCGM 100:2008, 5.1.2; from memory): u^2 is the sum of (df/dp u(p))^2 over independent parameters p.
/// The value is a minimum over poses. Inside the space its pose may shift freely and the slope in the pose is zero, so df/dp is the
/// slope at the fixed pose (envelope theorem). Where the pose leans on stops r_j >= 0, f* changes by df/dp - sum m_j dr_j/dp, with
/// m_j >= 0 the multipliers that balance the slopes, grad f = sum m_j grad r_j: a gap limited by a bump stop hangs on the stop's
/// height as much as on the points. Slopes in p are central differences over plus and minus one standard uncertainty, so that a
/// change of the nearest feature within the uncertainty is felt. A value may ask for other poses too, such as that of a state in which
/// something was read: what does not depend on the pose has no slope in it, and no stop holds it.
/// </remarks>
public sealed class PosePropagation(VehicleMotion motion, AxleModule? module)
{
    // A stop this near, mm, holds the pose.
    private const double ActiveMm = 0.05;
    private const double RadPerMm = 1 / 500.0;

    /// <summary>Uncertainty, shares and active stops of a least value.</summary>
    /// <param name="parts">The parts measured.</param>
    /// <param name="pose">The pose of the least value.</param>
    /// <param name="value">The value to be made least, in a pose with given parameters.</param>
    /// <param name="also">Numbers that the value depends on beside those of the parts, the axle and its stops.</param>
    /// <returns>Null when a neighbouring pose can't be solved. An end of the travel looked at is named only where the value gets worse towards it.</returns>
    /// <param name="subset">What was held when the pose was looked for; nothing where null.</param>
    /// <param name="isKinked">True where the value may change alike whichever way a reading errs: then the larger change counts, not half of both.</param>
    public PoseUncertainty? At(
        IReadOnlyList<Part> parts, ImmutableArray<double> pose, Func<Snapshot, double> value, IEnumerable<int>? also = null, PoseSubset? subset = null, bool isKinked = false)
    {
        SolvedPose? solved = module?.Motion.At(pose.AsSpan());
        if (solved is { IsSolved: false }) return null;
        if (Constraints(pose, solved, value, subset ?? PoseSubset.Whole) is not { } constraints) return null;
        PoseStart? start = solved is null ? null : module!.Motion.StartAt(solved, pose.AsSpan());
        double? kink = isKinked ? value(new Snapshot(motion.Parameters, module, solved)) : null;
        var variances = new SortedDictionary<int, double>();
        foreach (int index in Relevant(parts).Concat(also ?? []).Distinct().Order())
        {
            double u = motion.Vehicle.Parameters.Parameters[index].StandardUncertaintyMm;
            if (u == 0) continue;
            if (Effect(index, u, pose, start, value, constraints, kink) is not { } effect) return null;
            if (effect != 0) variances[index] = effect * effect;
        }

        double total = variances.Values.Sum();
        // A lock and a wind-up are typed as what they are; the end of a travel is only how far somebody looked.
        List<Constraint> faces = [.. constraints.Where(c => c.Coordinate is not null && c.Multiplier > 0)];
        IEnumerable<Constraint> leaning = constraints.Where(c => c.Coordinate is null).Concat(faces);
        return new PoseUncertainty(
            Math.Sqrt(total), Shares(variances, total), [.. leaning.Select(c => c.Name).Distinct()], subset is { EndsAtNoStop: true } || faces.Exists(c => module!.IsTravel(c.Coordinate!.Value)));
    }

    // Half the change of the least value when the parameter goes from one standard uncertainty below to one above.
    private double? Effect(
        int index, double u, ImmutableArray<double> pose, PoseStart? start, Func<Snapshot, double> value, List<Constraint> constraints, double? kink)
    {
        if (Shifted(index, u, pose, start) is not { } above || Shifted(index, -u, pose, start) is not { } below) return null;
        double effect = (value(above) - value(below)) / 2;
        foreach (Constraint c in constraints) effect -= c.Multiplier * (c.Reserve(above) - c.Reserve(below)) / 2;
        if (kink is { } nominal)
            effect = Math.Max(Math.Abs(value(above) - nominal), Math.Max(Math.Abs(value(below) - nominal), Math.Abs(effect)));
        return double.IsFinite(effect) ? effect : null;
    }

    private Snapshot? Shifted(int index, double byMm, ImmutableArray<double> pose, PoseStart? start)
    {
        // A reading that places points of other states moves them as well.
        (ReadOnlyMemory<double> parameters, _, MotionFault? unreached) = StatePlacing.Place(motion.Vehicle, motion.Vehicle.Parameters.Shifted(index, byMm));
        if (unreached is not null) return null;
        if (module is null) return new Snapshot(parameters, null, null);
        (AxleModule? shifted, _) = AxleModuleBuilder.Build(motion.Vehicle, module.Axle, parameters, like: module);
        SolvedPose? at = shifted?.Motion.Near(start!, pose.AsSpan());
        // Far from where it was measured the nearest pose of the vehicle as measured may be no start: then the way there is gone anew.
        if (at is { IsSolved: false }) at = shifted!.Motion.At(pose.AsSpan());
        return at is { IsSolved: true } ? new Snapshot(parameters, shifted, at) : null;
    }

    private IEnumerable<int> Relevant(IReadOnlyList<Part> parts)
    {
        IEnumerable<Part> stops = module is null ? [] : motion.Vehicle.Parts.Where(ParameterUse.IsStop);
        IEnumerable<int> used = ParameterUse.Of(motion.Vehicle, parts.Concat(stops));
        if (module is not null) used = used.Concat(ParameterUse.Of(module.Axle));
        return used;
    }

    private List<Constraint>? Constraints(ImmutableArray<double> pose, SolvedPose? solved, Func<Snapshot, double> value, PoseSubset subset)
    {
        if (module is null || solved is null) return [];
        var space = new ReachableSpace(module.Motion);
        List<Constraint> active = [.. Stops(solved, subset), .. Limits(pose)];
        if (active.Count == 0) return active;
        ReadOnlyMemory<double> nominal = motion.Parameters;
        if (space.Slope(pose.AsSpan(), p => value(new Snapshot(nominal, module, p))) is not { } slope) return null;
        foreach (Constraint c in active)
        {
            if (c.Coordinate is { } face) c.Slope = UnitSlope(pose.Length, face, c.FaceSign);
            else if (space.Slope(pose.AsSpan(), p => c.Reserve(new Snapshot(nominal, module, p))) is { } own) c.Slope = own;
            else return null;
        }

        // Along what is held inside its range no pose goes anywhere.
        foreach (HeldCoordinate held in subset.Held.Where(h => !active.Exists(c => c.Coordinate == h.Coordinate)))
            foreach (double[] own in active.Select(c => c.Slope).Append(slope)) own[held.Coordinate] = 0;
        Balance(slope, active);
        return active;
    }

    private IEnumerable<Constraint> Stops(SolvedPose solved, PoseSubset subset)
    {
        Stop[] stops = [.. subset.Stops(module!, motion.Parameters)];
        for (int j = 0; j < stops.Length; j++)
        {
            int number = j;
            if (stops[j].Reserve(solved.Relative(stops[j].FirstBody, stops[j].SecondBody)) > ActiveMm) continue;
            yield return new Constraint(stops[j].Name, s =>
            {
                Stop stop = subset.Stops(s.Module!, s.Parameters).ElementAt(number);
                return stop.Reserve(s.Relative(stop.FirstBody, stop.SecondBody));
            });
        }
    }

    // The box's own faces: how far the file says to look.
    private IEnumerable<Constraint> Limits(ImmutableArray<double> pose)
    {
        for (int d = 0; d < pose.Length; d++)
        {
            (int number, double at) = (d, pose[d]);
            PoseCoordinate c = module!.Motion.Box.Coordinates[d];
            double active = c.IsAngle ? ActiveMm * RadPerMm : ActiveMm;
            // The box of a changed vehicle has its faces elsewhere where they were typed with a give or take.
            if (c.High - at <= active)
                yield return new Constraint(module.EndOfTravel(d, high: true), s => s.Module!.Motion.Box.Coordinates[number].High - at) { Coordinate = d, FaceSign = -1 };
            else if (at - c.Low <= active)
                yield return new Constraint(module.EndOfTravel(d, high: false), s => at - s.Module!.Motion.Box.Coordinates[number].Low) { Coordinate = d, FaceSign = 1 };
        }
    }

    // Multipliers, zero or more, that balance the slopes best.
    private static void Balance(double[] slope, List<Constraint> active)
    {
        double[] rest = [.. slope];
        for (int round = 0; round < 400; round++)
            foreach (Constraint c in active)
            {
                double square = 0, share = 0;
                for (int d = 0; d < rest.Length; d++) (square, share) = (square + (c.Slope[d] * c.Slope[d]), share + (c.Slope[d] * rest[d]));
                if (!(square > 0)) continue;
                double next = Math.Max(0, c.Multiplier + (share / square)), change = next - c.Multiplier;
                for (int d = 0; d < rest.Length; d++) rest[d] -= change * c.Slope[d];
                c.Multiplier = next;
            }
    }

    private static double[] UnitSlope(int dimensions, int coordinate, int sign)
    {
        var slope = new double[dimensions];
        slope[coordinate] = sign;
        return slope;
    }

    private ImmutableArray<VarianceShare> Shares(SortedDictionary<int, double> variances, double total)
    {
        if (!(total > 0)) return [];
        return
        [
            .. variances
                .GroupBy(v => motion.Vehicle.Parameters.Parameters[v.Key].Reading)
                .Select(g => new VarianceShare(g.Key, g.Sum(v => v.Value) / total, motion.Vehicle.Parameters.Parameters[g.First().Key].HalfWidthMm))
                .OrderByDescending(s => s.Share).ThenBy(s => s.Reading, StringComparer.Ordinal),
        ];
    }

    private sealed class Constraint(string name, Func<Snapshot, double> reserve)
    {
        public string Name => name;

        public Func<Snapshot, double> Reserve => reserve;

        public int? Coordinate { get; init; }

        public int FaceSign { get; init; }

        public double[] Slope { get; set; } = [];

        public double Multiplier { get; set; }
    }
}
