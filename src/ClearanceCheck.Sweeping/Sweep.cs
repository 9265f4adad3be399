using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Extremes over all reachable poses of a moving system.</summary>
public static class Sweep
{
    /// <summary>The least signed gap of two solids.</summary>
    /// <remarks>Both orders of the two give the same value, bound and cells: the search always runs in the frame of the body with the lower number.</remarks>
    public static Extreme LeastGap(IMovingSystem system, int firstBody, Solid first, int secondBody, Solid second, SweepSettings settings)
    {
        if (firstBody > secondBody) return Swapped(system, LeastGap(system, secondBody, second, firstBody, first, settings), secondBody, firstBody);
        return firstBody == secondBody ? StillGap(first, second) : new SweepSearch(system, firstBody, secondBody, new GapObjective(first, second), settings).Run();
    }

    /// <summary>The least gap of two solids on bodies that never move against each other.</summary>
    public static Extreme StillGap(Solid first, Solid second)
    {
        // Rounding must not depend on the order of the two, so one of the orders is always taken.
        if (!IsAfter(first, second)) return Still(new GapObjective(first, second));
        Extreme extreme = Still(new GapObjective(second, first));
        Witness w = extreme.Basins[0].Witness;
        return extreme with { Basins = [extreme.Basins[0] with { Witness = new Witness(w.SecondNode, w.FirstNode, w.OnSecond, w.OnFirst) }] };
    }

    /// <summary>The largest distance between a point of one body and a point of another; <see cref="Extreme.Bound"/> lies above it.</summary>
    public static Extreme LongestChord(
        IMovingSystem system, int firstBody, Vector3d first, int secondBody, Vector3d second, SweepSettings settings)
    {
        if (firstBody > secondBody) return Swapped(system, LongestChord(system, secondBody, second, firstBody, first, settings), secondBody, firstBody);
        var objective = new ChordObjective(first, second);
        Extreme least = firstBody == secondBody ? Still(objective) : new SweepSearch(system, firstBody, secondBody, objective, Negative(settings)).Run();
        return least with
        {
            Value = -least.Value,
            Bound = -least.Bound,
            Basins = [.. least.Basins.Select(b => b with { Value = -b.Value })],
        };
    }

    /// <summary>The signed gap in one pose of the second body in the first's frame, with its witness there.</summary>
    public static (double Gap, Witness Witness) GapAt(Solid first, Solid second, in RigidMotion secondInFirst) =>
        (new GapObjective(first, second).Evaluate(secondInFirst, out Witness witness), witness);

    // For a chord the ceiling is a length that no rule minds, and the floor one that is too long already, both from above.
    private static SweepSettings Negative(SweepSettings settings) => settings with
    {
        CeilingMm = double.IsInfinity(settings.CeilingMm) ? settings.CeilingMm : -settings.CeilingMm,
        FloorMm = double.IsInfinity(settings.FloorMm) ? settings.FloorMm : -settings.FloorMm,
    };

    private static bool IsAfter(Solid first, Solid second)
    {
        ReadOnlySpan<Vector3d> a = first.Anchors, b = second.Anchors;
        int order = a.Length.CompareTo(b.Length);
        for (int i = 0; order == 0 && i < a.Length; i++)
            for (int axis = 0; order == 0 && axis < 3; axis++) order = a[i][axis].CompareTo(b[i][axis]);
        return order > 0 || (order == 0 && first.Support(0, Vector3d.UnitX) > second.Support(0, Vector3d.UnitX));
    }

    private static Extreme Still(ISweepObjective objective)
    {
        double value = objective.Evaluate(RigidMotion.Identity, out Witness witness);
        return new Extreme { Value = value, Bound = value, Grade = Grade.Proven, Basins = [new Basin(value, [], witness)], Cells = 0 };
    }

    private static Extreme Swapped(IMovingSystem system, Extreme extreme, int frameBody, int otherBody) =>
        extreme with { Basins = [.. extreme.Basins.Select(b => b with { Witness = Swapped(system, b, frameBody, otherBody) })] };

    // The witness stands in the lower body's frame; the caller's first body is the other one.
    private static Witness Swapped(IMovingSystem system, Basin basin, int frameBody, int otherBody)
    {
        ImmutableArray<double> pose = basin.Pose;
        RigidMotion back = pose.IsEmpty ? RigidMotion.Identity : system.At(pose.AsSpan()).Relative(otherBody, frameBody);
        Witness w = basin.Witness;
        return new Witness(w.SecondNode, w.FirstNode, back.Apply(w.OnSecond), back.Apply(w.OnFirst));
    }
}
