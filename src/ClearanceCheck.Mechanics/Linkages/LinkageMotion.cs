using System.Collections.Concurrent;
using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A linkage moved through its pose box: poses solved on demand and kept, curvature bounds proved block by block.</summary>
/// <remarks>
/// A dyadic pose is solved from its dyadic parent, the centre of the box from the measured state, so the answer depends on the pose
/// alone. Other poses are solved from the nearest pose of a fixed coarse grid.
/// </remarks>
public sealed class LinkageMotion : IMovingSystem
{
    // Free poses start from the nearest of 2^4 + 1 values a coordinate.
    private const int StartGridBits = 4;

    // No pose of the box: stands for the measured state.
    private static readonly DyadicPose Outside = new(-1, -1, -1, -1);

    private readonly LinkageSolver solver;
    private readonly BlockMap blocks;
    private readonly ConcurrentDictionary<DyadicPose, SolvedPose> kept = new();
    private readonly ConcurrentDictionary<DyadicPose, PoseStart> starts = new();
    private readonly Lazy<LinkageStages?> stages;
    private readonly ConcurrentDictionary<string, MovingPart?> partOfBodies = new();
    private readonly ConcurrentDictionary<string, (LinkagePart Part, LinkageMotion Motion)?> parts = new();
    private long freeSolves;

    public LinkageMotion(Linkage linkage, PoseBox box, ImmutableArray<Stop> stops)
        : this(linkage, box, stops, [])
    {
    }

    /// <param name="linkage">The linkage.</param>
    /// <param name="box">Its settings.</param>
    /// <param name="stops">What cuts them.</param>
    /// <param name="followers">Bodies that follow the linkage's; they are numbered after those, in order.</param>
    /// <exception cref="ArgumentException">A follower rides on a body that is not the linkage's, or has no place as it was measured.</exception>
    public LinkageMotion(Linkage linkage, PoseBox box, ImmutableArray<Stop> stops, ImmutableArray<Follower> followers)
    {
        if (followers.Select(f => f.Fault(linkage.Bodies.Length)).FirstOrDefault(f => f is not null) is { } fault) throw new ArgumentException(fault, nameof(followers));
        (Linkage, Box, Stops, Followers) = (linkage, box, stops, followers);
        solver = new LinkageSolver(linkage);
        blocks = new BlockMap(this);
        stages = new Lazy<LinkageStages?>(() => LinkageStages.Of(this));
    }

    public Linkage Linkage { get; }

    public PoseBox Box { get; }

    public ImmutableArray<Stop> Stops { get; }

    /// <summary>Bodies that follow the linkage's: body number is the number of the linkage's bodies plus the place in this list.</summary>
    public ImmutableArray<Follower> Followers { get; }

    // Two threads may solve the same kept pose at once; it counts once, so that the figure does not depend on the threads.
    public long Solves => kept.Count + Interlocked.Read(ref freeSolves) + parts.Values.Sum(p => p?.Motion.Solves ?? 0);

    public SolvedPose At(in DyadicPose pose) => kept.TryGetValue(pose, out SolvedPose? found) ? found : kept.GetOrAdd(pose, Solve(pose));

    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        const int Step = DyadicPose.Denominator >> StartGridBits;
        DyadicPose near = default;
        for (int d = 0; d < Box.Dimensions; d++)
        {
            double share = (pose[d] - Box.Coordinates[d].Low) / Box.Range(d);
            near = near.With(d, Math.Clamp((int)Math.Round(share * (1 << StartGridBits)), 0, 1 << StartGridBits) * Step);
        }

        Span<double> from = stackalloc double[Box.Dimensions];
        RigidMotion[] start = SolvedAncestor(near, from, out DyadicPose ancestor);
        Interlocked.Increment(ref freeSolves);
        if (Stages is null && BesideStart(ancestor, start, from, pose) is { } beside) return WithFollowers(beside);
        return Walk(start, from, pose, Stages?.DriverAt(pose));
    }

    /// <summary>Prepares a solved pose for <see cref="Near(PoseStart, ReadOnlySpan{double})"/>.</summary>
    public PoseStart StartAt(SolvedPose solved, ReadOnlySpan<double> pose) => ChordSolver.StartAt(Linkage, LinkageBodies(solved), pose);

    /// <summary>Solves a pose from bodies that are nearly there: those of the same pose before a point of the linkage was changed a little.</summary>
    /// <param name="near">What <see cref="StartAt"/> of the unchanged motion made of it.</param>
    /// <param name="pose">The pose, mm or rad.</param>
    public SolvedPose Near(PoseStart near, ReadOnlySpan<double> pose) =>
        ChordSolver.Solve(Linkage, near, pose) is { } bodies ? WithFollowers(bodies) : Near(near.Bodies, pose);

    /// <summary>The same from places alone.</summary>
    /// <param name="near">Places of the linkage's bodies; what comes after those, followers, is not read.</param>
    /// <param name="pose">The pose, mm or rad.</param>
    public SolvedPose Near(ReadOnlySpan<RigidMotion> near, ReadOnlySpan<double> pose)
    {
        RigidMotion[]? bodies = solver.Solve(near[..Linkage.Bodies.Length], pose, pose);
        return bodies is null ? new SolvedPose(PoseAnswerKind.NotSolved, default) : WithFollowers(bodies);
    }

    public bool IsUnreachable(in DyadicCell cell)
    {
        Span<Interval> settings = stackalloc Interval[Box.Dimensions];
        for (int d = 0; d < settings.Length; d++)
            settings[d] = new Interval(Box.ValueAt(d, cell.Low[d]), Box.ValueAt(d, cell.Low[d] + cell.Size[d]));
        return ReachProof.Excludes(Linkage, settings);
    }

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => blocks.Regions(cell);

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate) =>
        blocks.Bound(cell, frameBody, body, anchors, perCoordinate);

    public MovingPart? PartFor(IEnumerable<int> bodies)
    {
        // A follower stands where the bodies stand that carry it.
        ImmutableArray<int> own = [.. bodies.SelectMany(b => CarriersOf(b)).Distinct().Order()];
        return partOfBodies.GetOrAdd(string.Join(' ', own), _ =>
        {
            if (PartOf(LinkagePart.Needed(Linkage, own)) is not var (part, motion)) return null;
            IEnumerable<int> followers = Followers.Select((f, i) => (f, i)).Where(x => IsInside(part, x.f.Carriers)).Select(x => Linkage.Bodies.Length + x.i);
            return new MovingPart(motion, [.. part.Bodies, .. followers], part.Coordinates);
        });
    }

    /// <summary>The linkage in two stages, where it has them.</summary>
    internal LinkageStages? Stages => stages.Value;

    /// <summary>The part that some bodies make, in motion; one and the same however often it is asked for.</summary>
    /// <param name="needed">Bodies that need no others, in order.</param>
    internal (LinkagePart Part, LinkageMotion Motion)? PartOf(ImmutableArray<int> needed) =>
        parts.GetOrAdd(string.Join(' ', needed), _ => LinkagePart.Of(Linkage, needed) is { } part ? (part, InMotion(part)) : null);

    /// <summary>The proved parts that cover a cell; null where it is not proved.</summary>
    internal List<ProvedPart>? ProvedOver(in DyadicCell cell) => blocks.ProvedOver(cell);

    private ImmutableArray<int> CarriersOf(int body) =>
        body < Linkage.Bodies.Length ? [body] : Followers[body - Linkage.Bodies.Length].Carriers;

    private static bool IsInside(LinkagePart part, ImmutableArray<int> bodies) => bodies.All(b => part.Bodies.Contains(b));

    private LinkageMotion InMotion(LinkagePart part)
    {
        int Number(int body) => part.Bodies.IndexOf(body);
        return new LinkageMotion(
            part.Linkage,
            new PoseBox(part.Coordinates.Select(c => Box.Coordinates[c])),
            [.. Stops.Where(s => IsInside(part, [s.FirstBody, s.SecondBody])).Select(s => s with { FirstBody = Number(s.FirstBody), SecondBody = Number(s.SecondBody) })],
            [.. Followers.Where(f => IsInside(part, f.Carriers)).Select(f => f.Renumbered(Number))]);
    }

    /// <summary>The places of the linkage's own bodies in a solved pose, without its followers.</summary>
    internal RigidMotion[] LinkageBodies(SolvedPose pose) => pose.Bodies.Span[..Linkage.Bodies.Length].ToArray();

    // A follower without a place leaves the pose without an answer: nothing may be called clear there.
    private SolvedPose WithFollowers(RigidMotion[] bodies)
    {
        if (Followers.IsEmpty) return new SolvedPose(PoseAnswerKind.Solved, bodies);
        var all = new RigidMotion[bodies.Length + Followers.Length];
        bodies.CopyTo(all, 0);
        for (int i = 0; i < Followers.Length; i++)
        {
            if (Followers[i].Pose(bodies) is not { } pose) return new SolvedPose(PoseAnswerKind.NotSolved, default);
            all[bodies.Length + i] = pose;
        }

        return new SolvedPose(PoseAnswerKind.Solved, all);
    }

    private SolvedPose Solve(in DyadicPose pose)
    {
        Span<double> settings = stackalloc double[Box.Dimensions], from = stackalloc double[Box.Dimensions];
        Box.Values(pose, settings);
        RigidMotion[] start;
        if (pose.TryParent(Box.Dimensions, out DyadicPose parent)) start = SolvedAncestor(parent, from, out _);
        else
        {
            start = Linkage.Start;
            Linkage.StartSettings.CopyTo(from);
        }

        return Walk(start, from, settings, Stages?.DriverAt(pose));
    }

    private RigidMotion[]? BesideStart(DyadicPose ancestor, RigidMotion[] bodies, ReadOnlySpan<double> settings, ReadOnlySpan<double> pose)
    {
        if (!starts.TryGetValue(ancestor, out PoseStart? start)) start = starts.GetOrAdd(ancestor, ChordSolver.StartAt(Linkage, bodies, settings));
        return ChordSolver.Solve(Linkage, start, pose);
    }

    private RigidMotion[] SolvedAncestor(DyadicPose pose, Span<double> settings, out DyadicPose ancestor)
    {
        while (true)
        {
            SolvedPose at = At(pose);
            if (at.IsSolved)
            {
                Box.Values(pose, settings);
                ancestor = pose;
                return LinkageBodies(at);
            }

            if (!pose.TryParent(Box.Dimensions, out pose)) break;
        }

        ancestor = Outside;
        Linkage.StartSettings.CopyTo(settings);
        return Linkage.Start;
    }

    private SolvedPose Walk(RigidMotion[] start, ReadOnlySpan<double> from, ReadOnlySpan<double> settings, SolvedPose? driver)
    {
        RigidMotion[]? bodies = driver is null ? solver.Solve(start, from, settings)
            : driver.IsSolved ? Stages!.Solve(start, from, settings, driver) : null;
        if (bodies is not null) return WithFollowers(bodies);
        Span<Interval> at = stackalloc Interval[settings.Length];
        for (int i = 0; i < at.Length; i++) at[i] = Interval.From(settings[i]);
        return new SolvedPose(ReachProof.Excludes(Linkage, at) ? PoseAnswerKind.Unreachable : PoseAnswerKind.NotSolved, default);
    }
}
