using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping;

/// <summary>Extremes over all reachable poses of a moving system.</summary>
/// <remarks>Witness points stand in the vehicle frame; in the body's own coordinates where two solids never move against each other.</remarks>
public static class Sweep
{
    /// <summary>The least signed gap of two solids, each on one body.</summary>
    public static Extreme LeastGap(IMovingSystem system, int firstBody, Solid first, int secondBody, Solid second, SweepSettings settings) =>
        LeastGap(system, new RigidSolid(firstBody, first), new RigidSolid(secondBody, second), settings);

    /// <summary>The least signed gap of two solids.</summary>
    /// <remarks>
    /// Both orders of the two give the same value, bound and cells: the search runs in a frame, and takes the two in an order, that depend
    /// on the solids alone.
    /// </remarks>
    public static Extreme LeastGap(IMovingSystem system, SweptSolid first, SweptSolid second, SweepSettings settings)
    {
        if (SweepOrder.IsSwapped(first, second)) return Swapped(LeastGap(system, second, first, settings));
        var objective = new GapObjective(SweepOrder.Frame(first), first, second);
        return Run(system, objective, settings);
    }

    /// <summary>The least value of an objective, searched over those coordinates alone that move what it looks at.</summary>
    internal static Extreme Run(IMovingSystem system, ISweepObjective objective, SweepSettings settings)
    {
        if (objective.Tracks.Count == 0) return Still(objective);
        if (system.PartFor([objective.FrameBody, .. objective.Tracks.Select(t => t.Body)]) is { } part)
        {
            var own = new PartObjective(objective, part.Bodies);
            Extreme found = InVehicleFrame(part.System, new SweepSearch(part.System, own, settings).Run(), own.FrameBody);
            if (PartSweep.InWholePoses(system, part, found, settings.StopGiveMm) is { } whole) return whole;
        }

        return InVehicleFrame(system, new SweepSearch(system, objective, settings).Run(), objective.FrameBody);
    }

    /// <summary>The least gap of two solids on one body, in its own coordinates.</summary>
    public static Extreme StillGap(Solid first, Solid second)
    {
        RigidSolid a = new(0, first), b = new(0, second);
        return SweepOrder.IsSwapped(a, b) ? Swapped(Still(new GapObjective(0, b, a))) : Still(new GapObjective(0, a, b));
    }

    /// <summary>The largest distance between a point of one body and a point of another; <see cref="Extreme.Bound"/> lies above it.</summary>
    public static Extreme LongestChord(
        IMovingSystem system, int firstBody, Vector3d first, int secondBody, Vector3d second, SweepSettings settings)
    {
        if (firstBody > secondBody) return Swapped(LongestChord(system, secondBody, second, firstBody, first, settings));
        var objective = new ChordObjective(firstBody, first, secondBody, second);
        Extreme least = firstBody == secondBody ? Still(objective) : Run(system, objective, Negative(settings));
        return least with
        {
            Value = -least.Value,
            Bound = -least.Bound,
            Basins = [.. least.Basins.Select(b => b with { Value = -b.Value })],
        };
    }

    /// <summary>The signed gap of two solids in one solved pose.</summary>
    /// <param name="first">A solid.</param>
    /// <param name="second">Another.</param>
    /// <param name="pose">Where their bodies are.</param>
    /// <param name="near">Where it was seen in a pose beside this one: only time depends on it.</param>
    public static double GapAt(SweptSolid first, SweptSolid second, SolvedPose pose, Witness? near = null)
    {
        if (SweepOrder.IsSwapped(first, second)) return GapAt(second, first, pose, near is { } w ? Swapped(w) : null);
        var objective = new GapObjective(SweepOrder.Frame(first), first, second);
        if (near is { } known) objective.StartAt(known.FirstNode, known.SecondNode);
        return ((ISweepObjective)objective).Evaluate(pose, out _);
    }

    /// <summary>The signed gap of the two pieces of a witness in one solved pose; without a pose, of two solids on one body.</summary>
    public static double PieceGapAt(SweptSolid first, SweptSolid second, SolvedPose? pose, Witness pieces) => SweepOrder.IsSwapped(first, second)
        ? PieceGapAt(second, first, pose, Swapped(pieces))
        : new GapObjective(SweepOrder.Frame(first), first, second).PieceGap(pose, pieces);

    /// <summary>The signed gap in one pose of the second body in the first's frame, with its witness there.</summary>
    public static (double Gap, Witness Witness) GapAt(Solid first, Solid second, in RigidMotion secondInFirst) =>
        (new GapObjective(0, new RigidSolid(0, first), new RigidSolid(1, second)).Evaluate([secondInFirst], out Witness witness), witness);

    // For a chord the ceiling is a length that no rule minds, and the floor one that is too long already, both from above.
    internal static SweepSettings Negative(SweepSettings settings) => settings with
    {
        CeilingMm = double.IsInfinity(settings.CeilingMm) ? settings.CeilingMm : -settings.CeilingMm,
        FloorMm = double.IsInfinity(settings.FloorMm) ? settings.FloorMm : -settings.FloorMm,
    };

    private static Extreme Still(ISweepObjective objective)
    {
        Span<RigidMotion> still = stackalloc RigidMotion[objective.Tracks.Count];
        still.Fill(RigidMotion.Identity);
        double value = objective.Evaluate(still, out Witness witness);
        return new Extreme { Value = value, Bound = value, Grade = Grade.Proven, Basins = [new Basin(value, [], witness)], Cells = 0 };
    }

    private static Extreme Swapped(Extreme extreme) => extreme with
    {
        Basins = [.. extreme.Basins.Select(b => b with { Witness = Swapped(b.Witness) })],
    };

    private static Witness Swapped(Witness w) => new(w.SecondNode, w.FirstNode, w.OnSecond, w.OnFirst);

    private static Extreme InVehicleFrame(IMovingSystem system, Extreme extreme, int frameBody) => frameBody == 0
        ? extreme
        : extreme with { Basins = [.. extreme.Basins.Select(b => b with { Witness = InVehicleFrame(b.Witness, system.At(b.Pose.AsSpan())[frameBody]) })] };

    private static Witness InVehicleFrame(Witness w, RigidMotion frame) => w with { OnFirst = frame.Apply(w.OnFirst), OnSecond = frame.Apply(w.OnSecond) };
}
