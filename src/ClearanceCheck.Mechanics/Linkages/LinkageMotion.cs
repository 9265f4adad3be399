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

    private readonly LinkageSolver solver;
    private readonly BlockMap blocks;
    private readonly ConcurrentDictionary<DyadicPose, SolvedPose> kept = new();
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
    }

    public Linkage Linkage { get; }

    public PoseBox Box { get; }

    public ImmutableArray<Stop> Stops { get; }

    /// <summary>Bodies that follow the linkage's: body number is the number of the linkage's bodies plus the place in this list.</summary>
    public ImmutableArray<Follower> Followers { get; }

    // Two threads may solve the same kept pose at once; it counts once, so that the figure does not depend on the threads.
    public long Solves => kept.Count + Interlocked.Read(ref freeSolves);

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
        RigidMotion[] start = SolvedAncestor(near, from);
        Interlocked.Increment(ref freeSolves);
        return Walk(start, from, pose);
    }

    /// <summary>Solves a pose from bodies that are nearly there: those of the same pose before a point of the linkage was changed a little.</summary>
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

    public DyadicCell CurvatureRegion(in DyadicCell cell) => blocks.Region(cell);

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate) =>
        blocks.Bound(cell, frameBody, body, anchors, perCoordinate);

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
        if (pose.TryParent(Box.Dimensions, out DyadicPose parent)) start = SolvedAncestor(parent, from);
        else
        {
            start = Linkage.Start;
            Linkage.StartSettings.CopyTo(from);
        }

        return Walk(start, from, settings);
    }

    private RigidMotion[] SolvedAncestor(DyadicPose pose, Span<double> settings)
    {
        while (true)
        {
            SolvedPose at = At(pose);
            if (at.IsSolved)
            {
                Box.Values(pose, settings);
                return LinkageBodies(at);
            }

            if (!pose.TryParent(Box.Dimensions, out pose)) break;
        }

        Linkage.StartSettings.CopyTo(settings);
        return Linkage.Start;
    }

    private SolvedPose Walk(RigidMotion[] start, ReadOnlySpan<double> from, ReadOnlySpan<double> settings)
    {
        RigidMotion[]? bodies = solver.Solve(start, from, settings);
        if (bodies is not null) return WithFollowers(bodies);
        Span<Interval> at = stackalloc Interval[settings.Length];
        for (int i = 0; i < at.Length; i++) at[i] = Interval.From(settings[i]);
        return new SolvedPose(ReachProof.Excludes(Linkage, at) ? PoseAnswerKind.Unreachable : PoseAnswerKind.NotSolved, default);
    }
}
