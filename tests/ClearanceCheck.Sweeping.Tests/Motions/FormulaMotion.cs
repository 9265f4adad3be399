using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>Bodies on one another by turns and slides that are linear in the pose, with curvature over-estimated in closed form.</summary>
/// <remarks>
/// A point of one body in the frame of another is E_1 .. E_m x with elementary E_i. Its second derivative in one coordinate is the
/// sum over the turns of rate^2 times at most the distance from the axis, and of twice rate_i rate_j times at most the speed that
/// E_j gives, for each turn i that comes before j. Distances are bounded from pivot to pivot.
/// </remarks>
internal sealed class FormulaMotion : IMovingSystem
{
    private readonly ImmutableArray<Move>[] chains;
    private long solves;

    /// <param name="box">The pose box.</param>
    /// <param name="bodies">For each body from number 1 on: its parent, and how it moves on it, outermost first.</param>
    /// <param name="stops">What cuts the box.</param>
    public FormulaMotion(PoseBox box, IReadOnlyList<(int Parent, ImmutableArray<Move> Moves)> bodies, ImmutableArray<Stop> stops)
    {
        (Box, Stops) = (box, stops);
        chains = new ImmutableArray<Move>[bodies.Count + 1];
        chains[0] = [];
        for (int b = 1; b < chains.Length; b++) chains[b] = [.. chains[bodies[b - 1].Parent], .. bodies[b - 1].Moves];
        Bodies = [.. bodies];
    }

    public ImmutableArray<(int Parent, ImmutableArray<Move> Moves)> Bodies { get; }

    public PoseBox Box { get; }

    public ImmutableArray<Stop> Stops { get; }

    public long Solves => Interlocked.Read(ref solves);

    public FormulaMotion With(ImmutableArray<Stop> stops) => new(Box, Bodies, stops);

    public SolvedPose At(in DyadicPose pose)
    {
        Span<double> values = stackalloc double[Box.Dimensions];
        Box.Values(pose, values);
        return At(values);
    }

    public SolvedPose At(ReadOnlySpan<double> pose)
    {
        Interlocked.Increment(ref solves);
        var bodies = new RigidMotion[chains.Length];
        for (int b = 0; b < bodies.Length; b++)
        {
            bodies[b] = RigidMotion.Identity;
            foreach (Move move in chains[b]) bodies[b] *= move.At(move.Amount(pose));
        }

        return new SolvedPose(PoseAnswerKind.Solved, bodies);
    }

    public bool IsUnreachable(in DyadicCell cell) => false;

    public IReadOnlyList<DyadicCell> CurvatureRegions(in DyadicCell cell) => [DyadicCell.Whole(Box.Dimensions)];

    public CurvatureBasis Curvatures(in DyadicCell cell, int frameBody, int body, ReadOnlySpan<Vector3d> anchors, Span<Curvature> perCoordinate)
    {
        Move[] factors = Between(frameBody, body);
        for (int k = 0; k < perCoordinate.Length; k++)
        {
            double most = 0;
            foreach (Vector3d anchor in anchors) most = Math.Max(most, SecondDerivative(factors, anchor, k));
            perCoordinate[k] = Curvature.Ball(most);
        }

        return CurvatureBasis.Enclosed;
    }

    private Move[] Between(int frameBody, int body)
    {
        ImmutableArray<Move> frame = chains[frameBody], own = chains[body];
        int shared = 0;
        while (shared < frame.Length && shared < own.Length && ReferenceEquals(frame[shared], own[shared])) shared++;
        return [.. frame.Skip(shared).Reverse().Select(m => m.Inverse), .. own.Skip(shared)];
    }

    private double SecondDerivative(Move[] factors, Vector3d point, int k)
    {
        double sum = 0;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i] is not Move.Turn) continue;
            double rate = Math.Abs(factors[i].Rates[k]);
            sum += rate * Speed(factors, i, point, k);
            for (int j = i + 1; j < factors.Length; j++) sum += 2 * rate * Speed(factors, j, point, k);
        }

        return sum;
    }

    // The most that factor i alone moves the point per unit of the coordinate.
    private double Speed(Move[] factors, int i, Vector3d point, int k) => Math.Abs(factors[i].Rates[k]) * factors[i] switch
    {
        Move.Turn turn => Reach(factors, i + 1, point, turn.Point),
        Move.Slide slide => slide.Along.Length,
        _ => throw new InvalidOperationException(),
    };

    // The most that the point, moved by the factors from i on, can be away from another.
    private double Reach(Move[] factors, int i, Vector3d point, Vector3d from)
    {
        if (i == factors.Length) return (point - from).Length;
        if (factors[i] is Move.Turn turn) return Reach(factors, i + 1, point, turn.Point) + (turn.Point - from).Length;
        double amount = 0;
        for (int k = 0; k < Box.Dimensions; k++)
            amount += Math.Abs(factors[i].Rates[k]) * Math.Max(Math.Abs(Box.Coordinates[k].Low), Math.Abs(Box.Coordinates[k].High));
        return Reach(factors, i + 1, point, from) + (amount * ((Move.Slide)factors[i]).Along.Length);
    }
}
