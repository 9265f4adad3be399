using System.Collections.Concurrent;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A linkage in two stages: a part that moves by itself with fewer coordinates, and the rest, which it drives.</summary>
/// <remarks>An axle on soft arms is solved and proved once for all steering angles; its knuckles and rods are few unknowns more.</remarks>
internal sealed class LinkageStages
{
    private readonly LinkageSolver solver;
    private readonly int bodies;
    private readonly PoseBox box;
    private readonly ConcurrentDictionary<DyadicCell, DriverBlock?> blocks = new();

    private LinkageStages(LinkageMotion motion, LinkagePart part, LinkageMotion driver, Linkage rest)
    {
        (Part, Driver, Rest) = (part, driver, rest);
        (solver, bodies, box) = (new LinkageSolver(rest), motion.Linkage.Bodies.Length, motion.Box);
    }

    /// <summary>Which bodies and coordinates of the whole drive.</summary>
    public LinkagePart Part { get; }

    /// <summary>The motion of what drives.</summary>
    public LinkageMotion Driver { get; }

    /// <summary>The rest, in the whole's numbers.</summary>
    public Linkage Rest { get; }

    /// <summary>The stages of a motion: what wheel travel and forces move first; null when that needs all coordinates.</summary>
    public static LinkageStages? Of(LinkageMotion motion)
    {
        Linkage whole = motion.Linkage;
        if (!whole.IsSoft) return null;
        IEnumerable<int> moved = whole.Joints.OfType<Joint.Travel>().Select(t => t.Body).Concat(Enumerable.Range(1, whole.Bodies.Length - 1).Where(whole.IsLoaded));
        return motion.PartOf(LinkagePart.Needed(whole, moved)) is var (part, driver) && part.Rest(whole) is { } rest ? new LinkageStages(motion, part, driver, rest) : null;
    }

    // The block of the driver's box that a block of the whole's belongs to.
    private DyadicCell InDriver(in DyadicCell block)
    {
        DyadicPose low = default, size = default;
        for (int i = 0; i < Part.Coordinates.Length; i++)
            (low, size) = (low.With(i, block.Low[Part.Coordinates[i]]), size.With(i, block.Size[Part.Coordinates[i]]));
        return new DyadicCell(low, size);
    }

    /// <summary>The driver's solution for a dyadic pose of the whole.</summary>
    public SolvedPose DriverAt(in DyadicPose pose)
    {
        DyadicPose own = default;
        for (int i = 0; i < Part.Coordinates.Length; i++) own = own.With(i, pose[Part.Coordinates[i]]);
        return Driver.At(own);
    }

    /// <summary>The driver's solution for any pose of the whole.</summary>
    public SolvedPose DriverAt(ReadOnlySpan<double> pose) => Driver.At(InDriver(pose).AsSpan());

    /// <summary>Solves the rest from a solved pose of the whole nearby; null when the solver could not.</summary>
    public RigidMotion[]? Solve(RigidMotion[] from, ReadOnlySpan<double> fromSettings, ReadOnlySpan<double> settings, SolvedPose driver)
    {
        var driven = new RigidMotion[bodies];
        Array.Fill(driven, RigidMotion.Identity);
        for (int i = 1; i < Part.Bodies.Length; i++) driven[Part.Bodies[i]] = driver[i];
        return solver.Solve(from, fromSettings, settings, driven);
    }

    /// <summary>What is proved of the driver over a block of the whole's box; null where nothing is.</summary>
    /// <param name="block">The block.</param>
    /// <param name="settings">Its centre.</param>
    /// <param name="centre">The whole's bodies there.</param>
    public DriverBlock? DriverOver(in DyadicCell block, double[] settings, RigidMotion[] centre)
    {
        DyadicCell own = InDriver(block);
        if (!blocks.TryGetValue(own, out DriverBlock? known)) known = blocks.GetOrAdd(own, Made(own, settings, centre));
        return known;
    }

    private DriverBlock? Made(in DyadicCell own, double[] settings, RigidMotion[] centre)
    {
        if (Driver.ProvedOver(own) is not { } parts) return null;
        RigidMotion[] places = [.. Part.Bodies.Select(b => centre[b])];
        double[] at = InDriver(settings);
        MotionJet<Real>[][] jets = [.. Enumerable.Range(0, at.Length).Select(k => LinkageDerivatives.Along(Part.Linkage, places, at, k))];
        return new DriverBlock(Driven(jets), Driven(DrivenHull.Of([.. parts.Select(p => p.Jets)])), [.. parts.Select(p => (p.Settings, Driven(p.Jets)))]);
    }

    private DrivenJets<T> Driven<T>(MotionJet<T>[][] jets)
        where T : unmanaged, IReal<T> => DrivenJets<T>.Of(Part, jets, bodies, box.Dimensions);

    private double[] InDriver(ReadOnlySpan<double> pose)
    {
        var own = new double[Part.Coordinates.Length];
        for (int i = 0; i < own.Length; i++) own[i] = pose[Part.Coordinates[i]];
        return own;
    }
}
