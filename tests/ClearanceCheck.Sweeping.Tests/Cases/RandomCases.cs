using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Tests.Motions;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>Random mechanisms with random parts: about a third of the pairs overlap somewhere, half of them have stops.</summary>
internal static class RandomCases
{
    private const int Kinds = 8;

    /// <param name="seed">The same seed gives the same case.</param>
    /// <param name="linkages">False leaves out the mechanisms that have to be solved.</param>
    public static SweepCase Draw(ulong seed, bool linkages = true)
    {
        var random = new SplitMix64(seed);
        int kind = (int)(seed % (ulong)(linkages ? Kinds : Kinds - 1));
        IMovingSystem system = Mechanism(random, kind, out int bodies);
        (int a, int b) = bodies == 1 ? (0, 1) : random.Below(3) switch { 0 => (0, bodies), 1 => (1, bodies), _ => (bodies, 0) };
        Solid first = RandomSolid(random, random.Cube(200), mayBeDisc: true);
        // The second part stands near the first in the middle of the travel.
        Vector3d near = Middle(first) + (random.UnitVector() * (Size(first) + random.In(0, 350)));
        SolvedPose middle = system.At(DyadicPose.Center(system.Box.Dimensions));
        Vector3d place = middle.Relative(b, a).Apply(near);
        Solid second = RandomSolid(random, place, mayBeDisc: first is not Revolved);
        if (random.Below(2) == 0) system = WithStops(random, system, bodies);
        return new SweepCase(system, a, first, b, second);
    }

    public static IMovingSystem With(IMovingSystem system, ImmutableArray<Stop> stops) => system switch
    {
        FormulaMotion formula => formula.With(stops),
        LinkageMotion linkage => new LinkageMotion(linkage.Linkage, linkage.Box, stops),
        _ => throw new NotSupportedException(),
    };

    /// <summary>The stop with its reserve made less.</summary>
    public static Stop Shifted(Stop stop, double by) => stop switch
    {
        LongestStop longest => longest with { LongestMm = longest.LongestMm - by },
        ShortestStop shortest => shortest with { ShortestMm = shortest.ShortestMm + by },
        HeightStop height => height with { LeastMm = height.LeastMm + by },
        _ => throw new NotSupportedException(),
    };

    private static IMovingSystem Mechanism(SplitMix64 random, int kind, out int bodies)
    {
        bodies = kind is 0 or 5 or 6 ? 2 : 1;
        return kind switch
        {
            0 => Arm(random),
            1 => Formula([Slide(random, 0, 2), Turn(random, 1, 2, 1)], Mm(random), Rad(random)),
            2 => Ball(random),
            3 => Formula([Turn(random, 0, 1, 1), Slide(random, 0, 1) with { Along = random.UnitVector() * 60 }], Rad(random)),
            4 => Axle(random),
            5 => Long(random),
            6 => SideBySide(random),
            _ => ThreeLinks(random),
        };
    }

    private static FormulaMotion Arm(SplitMix64 random) => new(
        new PoseBox([Rad(random), Rad(random)]), [(0, [Turn(random, 0, 2, 1)]), (1, [Turn(random, 1, 2, 1)])], []);

    private static FormulaMotion Ball(SplitMix64 random)
    {
        Vector3d at = random.Cube(300);
        return Formula(
            [
                new Move.Turn(at, Vector3d.UnitZ, Rates(0, 3, 1)),
                new Move.Turn(at, Vector3d.UnitY, Rates(1, 3, 1)),
                new Move.Turn(at, Vector3d.UnitX, Rates(2, 3, 1)),
            ],
            Rad(random), Rad(random), Rad(random));
    }

    // A blend: height and roll of a solid axle from its two travels, then steering about a tilted line.
    private static FormulaMotion Axle(SplitMix64 random)
    {
        int d = 2 + random.Below(2);
        ImmutableArray<double> height = [.. Enumerable.Range(0, d).Select(k => k < 2 ? 0.5 : 0)];
        ImmutableArray<double> roll = [.. Enumerable.Range(0, d).Select(k => k == 0 ? 1 / 1500.0 : k == 1 ? -1 / 1500.0 : 0)];
        ImmutableArray<Move> moves = [new Move.Slide(Vector3d.UnitZ, height), new Move.Turn(random.Cube(100), Vector3d.UnitX, roll)];
        if (d == 3) moves = moves.Add(Turn(random, 2, d, 1));
        return Formula(moves, [.. new[] { Mm(random), Mm(random), Rad(random) }.Take(d)]);
    }

    // Two bodies of the chassis, one turning, one sliding: what stands still in the world swings in the other's frame.
    private static FormulaMotion SideBySide(SplitMix64 random) => new(
        new PoseBox([Rad(random), Mm(random)]), [(0, [Turn(random, 0, 2, 1)]), (0, [Slide(random, 1, 2)])], []);

    // Four coordinates over two bodies, one of them in two places at once.
    private static FormulaMotion Long(SplitMix64 random) => new(
        new PoseBox([Mm(random), Rad(random), Rad(random), Mm(random)]),
        [(0, [Slide(random, 0, 4), Turn(random, 1, 4, 1)]), (1, [Turn(random, 2, 4, 1), Slide(random, 3, 4), Turn(random, 3, 4, 1 / 600.0)])], []);

    private static LinkageMotion ThreeLinks(SplitMix64 random)
    {
        Vector3d Near(double x, double y, double z) => new Vector3d(x, y, z) + random.Cube(25);
        bool single = random.Below(3) == 0;
        var joints = new List<Joint>
        {
            new Joint.Rod("lower left", 0, Near(-920, 430, -15), 1, Near(-20, 505, -88)),
            new Joint.Rod("lower right", 0, Near(-920, -430, -15), 1, Near(-20, -505, -88)),
            new Joint.Rod("upper", 0, Near(-705, 245, 175), 1, Near(-30, 255, 138)),
            new Joint.Rod("track bar", 0, Near(85, 470, 172), 1, Near(55, -445, 83)),
            new Joint.Travel("left", 1, new(0, 795, 0), 0, 0),
            new Joint.Travel("right", 1, new(0, -795, 0), single ? 0 : 1, 0),
        };
        int d = single ? 1 : 2;
        Linkage linkage = Linkage.Build(["chassis", "axle"], joints, d).Linkage!;
        double up = random.In(60, 110), down = random.In(60, 110);
        return new LinkageMotion(linkage, new PoseBox([.. Enumerable.Range(0, d).Select(k => new PoseCoordinate($"travel {k}", false, -down, up))]), []);
    }

    private static IMovingSystem WithStops(SplitMix64 random, IMovingSystem system, int bodies)
    {
        ImmutableArray<Stop> stops = [];
        for (int n = 1 + random.Below(2); n > 0; n--) stops = stops.Add(RandomStop(random, system, random.Below(bodies), bodies, random.Below(3)));
        return With(system, stops);
    }

    // The limit is set so that a share of all poses is beyond it.
    private static Stop RandomStop(SplitMix64 random, IMovingSystem system, int a, int b, int kind)
    {
        Vector3d first = random.Cube(300), second = first + random.Cube(300), axis = random.UnitVector();
        Stop Make(double limit) => kind switch
        {
            0 => new LongestStop("shock at full length", a, first, b, second, limit),
            1 => new ShortestStop("shock bottomed", a, first, b, second, limit),
            _ => new HeightStop("bump stop", a, first, b, second, axis, limit),
        };
        Stop open = Make(0);
        var reserves = new List<double>();
        for (int i = 0; i < 40; i++)
        {
            var pose = new double[system.Box.Dimensions];
            for (int k = 0; k < pose.Length; k++) pose[k] = random.In(system.Box.Coordinates[k].Low, system.Box.Coordinates[k].High);
            reserves.Add(open.Reserve(system.At((ReadOnlySpan<double>)pose).Relative(a, b)));
        }

        reserves.Sort();
        double cut = reserves[random.Below(25)];
        return Make(kind == 0 ? -cut : cut);
    }

    private static FormulaMotion Formula(ImmutableArray<Move> moves, params PoseCoordinate[] coordinates) => new(new PoseBox(coordinates), [(0, moves)], []);

    private static PoseCoordinate Mm(SplitMix64 random) => new("travel", false, -random.In(50, 120), random.In(50, 120));

    private static PoseCoordinate Rad(SplitMix64 random) => new("turn", true, -random.In(0.2, 0.6), random.In(0.2, 0.6));

    private static Move.Turn Turn(SplitMix64 random, int k, int d, double rate) => new(random.Cube(300), random.UnitVector(), Rates(k, d, rate));

    private static Move.Slide Slide(SplitMix64 random, int k, int d) => new(random.UnitVector(), Rates(k, d, 1));

    private static ImmutableArray<double> Rates(int k, int d, double rate) => [.. Enumerable.Range(0, d).Select(i => i == k ? rate : 0)];

    private static Solid RandomSolid(SplitMix64 random, Vector3d middle, bool mayBeDisc)
    {
        if (mayBeDisc && random.Below(4) == 0) return SolidDisc.Of(middle, random.UnitVector(), random.In(60, 250), random.In(20, 120), coarseMm: 2);
        var points = new List<Vector3d> { middle };
        Vector3d step = random.UnitVector() * random.In(15, 60);
        for (int n = random.Below(9); n > 0; n--)
        {
            step += random.Cube(25);
            points.Add(points[^1] + step);
        }

        return new CapsuleChain(points, random.In(0, 30));
    }

    private static Vector3d Middle(Solid solid) => solid is CapsuleChain chain ? chain.Points[chain.Points.Length / 2] : solid.Anchors[0];

    private static double Size(Solid solid) => solid is CapsuleChain chain ? chain.RadiusMm : 0;
}
