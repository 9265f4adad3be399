using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Random linkages of realistic size: the kinds that suspensions and steering are made of, with every point moved about.</summary>
internal sealed class Draws(int seed)
{
    private readonly Random random = new(seed);

    /// <summary>Kinds whose joints are exact.</summary>
    public const int Kinds = 7;

    /// <summary>Those, and the soft and steered ones after them.</summary>
    public const int AllKinds = 12;

    /// <summary>The kind with a steering coordinate, in rad, as its third.</summary>
    public const int Steered = 11;

    public double In(double low, double high) => low + ((high - low) * random.NextDouble());

    public int Whole(int below) => random.Next(below);

    public Vector3d Near(double x, double y, double z, double half = 50) =>
        new(x + In(-half, half), y + In(-half, half), z + In(-half, half));

    /// <summary>Three links and a track bar: the axle is body 1, coordinates 0 and 1 are its hubs' heights.</summary>
    public Joint[] ThreeLinkAxle() =>
    [
        new Joint.Rod("lower left", 0, Near(-920, 430, -15), 1, Near(-20, 505, -88)),
        new Joint.Rod("lower right", 0, Near(-920, -430, -15), 1, Near(-20, -505, -88)),
        new Joint.Rod("upper", 0, Near(-705, 245, 175), 1, Near(-30, 255, 138)),
        new Joint.Rod("track bar", 0, Near(85, 470, 172), 1, Near(55, -445, 83)),
        .. Hubs(),
    ];

    /// <summary>One linkage of the given kind: its bodies, joints and number of coordinates.</summary>
    public (string[] Bodies, Joint[] Joints, int Coordinates) Kind(int kind) => kind switch
    {
        0 => (["chassis", "axle"], ThreeLinkAxle(), 2),
        1 => (["chassis", "axle"], TriangulatedAxle(), 2),
        2 => (["chassis", "beam"], SplitBeam(), 1),
        3 => (["chassis", "lower arm", "upper arm", "knuckle"], DoubleWishbone(), 1),
        4 => (["chassis", "arm"], TrailingArm(), 1),
        5 => (["chassis", "axle", "lower left", "track bar"], AxleWithLinkBodies(), 2),
        6 => (["chassis", "crank", "follower"], Cranks(), 1),
        7 => (["chassis", "axle"], FiveLinks(), 2),
        8 => (["chassis", "axle"], RadiusArmsOnTheAxle(), 2),
        9 => (["chassis", "axle", "left arm", "right arm"], RadiusArms(), 2),
        10 => (["chassis", "axle", "left shackle", "right shackle"], LeafSprings(), 2),
        _ => (["chassis", "axle", "left knuckle", "right knuckle", "pitman arm"], SteeredAxle(), 3),
    };

    public LinkageMotion Motion(int kind, double range)
    {
        (string[] bodies, Joint[] joints, int coordinates) = Kind(kind);
        return Motion(bodies, joints, coordinates, range);
    }

    public static LinkageMotion Motion(string[] bodies, Joint[] joints, int coordinates, double range)
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(bodies, joints, coordinates);
        fault.ShouldBeNull();
        return new LinkageMotion(linkage!, new PoseBox(Enumerable.Range(0, coordinates).Select(c => joints.OfType<Joint.Turn>().Any(t => t.Coordinate == c)
            ? new PoseCoordinate("steering", true, -0.5, 0.5)
            : new PoseCoordinate($"travel {c}", false, -range, range))), []);
    }

    private static Joint[] Hubs(double offset = 0) =>
        [new Joint.Travel("left", 1, new(0, 795, 0), 0, offset), new Joint.Travel("right", 1, new(0, -795, 0), 1, offset)];

    private Joint[] TriangulatedAxle() =>
    [
        new Joint.Rod("lower left", 0, Near(-900, 420, -20), 1, Near(-20, 520, -90)),
        new Joint.Rod("lower right", 0, Near(-900, -420, -20), 1, Near(-20, -520, -90)),
        new Joint.Rod("upper left", 0, Near(-700, 480, 160), 1, Near(-30, 90, 140)),
        new Joint.Rod("upper right", 0, Near(-700, -480, 160), 1, Near(-30, -90, 140)),
        .. Hubs(),
    ];

    private Joint[] SplitBeam() =>
    [
        new Joint.Ball("beam pivot", 0, 1, Near(25, -215, -85)),
        new Joint.Ball("radius arm pivot", 1, 0, Near(-890, 385, -45)),
        new Joint.Travel("hub", 1, Near(0, 805, 0), 0, 0),
    ];

    private Joint[] DoubleWishbone() =>
    [
        new Joint.Hinge("lower pivot", 0, 1, Near(0, 350, -90), Near(1, 0, 0, 0.15)),
        new Joint.Hinge("upper pivot", 0, 2, Near(0, 440, 120), Near(1, 0, 0, 0.15)),
        new Joint.Ball("lower ball", 1, 3, Near(0, 730, -110, 30)),
        new Joint.Ball("upper ball", 3, 2, Near(-10, 680, 130, 30)),
        new Joint.Rod("tie rod", 0, Near(-140, 370, -60, 30), 3, Near(-140, 700, -70, 30)),
        new Joint.Travel("hub", 3, Near(0, 800, 0, 20), 0, 0),
    ];

    private Joint[] TrailingArm() =>
    [
        new Joint.Hinge("pivot", 1, 0, Near(400, 450, 30), Near(0.2, 1, 0, 0.2)),
        new Joint.Travel("hub", 1, Near(0, 780, 0), 0, 0),
    ];

    private Joint[] AxleWithLinkBodies()
    {
        Vector3d lowerFrame = Near(-920, 430, -15), lowerAxle = Near(-20, 505, -88), barFrame = Near(85, 470, 172), barAxle = Near(55, -445, 83);
        return
        [
            new Joint.Ball("lower left front", 0, 2, lowerFrame),
            new Joint.Ball("lower left rear", 2, 1, lowerAxle),
            new Joint.Rod("lower right", 0, Near(-920, -430, -15), 1, Near(-20, -505, -88)),
            new Joint.Rod("upper", 0, Near(-705, 245, 175), 1, Near(-30, 255, 138)),
            new Joint.Ball("track bar frame", 3, 0, barFrame),
            new Joint.Ball("track bar axle", 1, 3, barAxle),
            .. Hubs(),
        ];
    }

    private Joint[] Cranks()
    {
        Vector3d pin = Near(150, 20, 40, 20), other = Near(195, -400, 10, 20);
        return
        [
            new Joint.Hinge("crank pivot", 0, 1, Near(0, 0, 0, 20), Near(0.1, 1, 0.2, 0.15)),
            new Joint.Hinge("follower pivot", 2, 0, Near(60, -420, 30, 20), Near(0.3, -0.2, 1, 0.15)),
            new Joint.Rod("rod", 1, pin, 2, other),
            new Joint.Travel("pin height", 1, pin, 0, 0),
        ];
    }

    private Joint.Rod TrackBar() => new("track bar", 0, Near(85, 470, 172), 1, Near(55, -445, 83));

    private Joint[] FiveLinks() =>
    [
        new Joint.Spring("lower left", 0, Near(930, 445, -35), 1, Near(25, 520, -92), In(3000, 15000)),
        new Joint.Spring("lower right", 0, Near(930, -445, -35), 1, Near(25, -520, -92), In(3000, 15000)),
        new Joint.Spring("upper left", 0, Near(760, 380, 165), 1, Near(-15, 400, 112), In(3000, 15000)),
        new Joint.Spring("upper right", 0, Near(760, -380, 165), 1, Near(-15, -400, 112), In(3000, 15000)),
        TrackBar(), .. Hubs(),
    ];

    private Joint.Bushing Bushing(string name, int housing, int pin, Vector3d at, bool turns) => new(
        name, housing, pin, at, Rotation.About(new(In(-1, 1), In(-1, 1), In(-1, 1)), In(0, 1)), new(In(2000, 8000), In(800, 3000), In(2000, 8000)),
        turns ? new Vector3d(In(2e6, 8e6), In(1e5, 1e6), In(2e6, 8e6)) : default, In(0, 1) < 0.5);

    private Joint[] RadiusArmsOnTheAxle() =>
    [
        Bushing("left", 0, 1, Near(-955, 395, -25), true), Bushing("right", 0, 1, Near(-955, -395, -25), true), TrackBar(), .. Hubs(),
    ];

    private Joint[] RadiusArms() =>
    [
        .. Enumerable.Range(0, 2).SelectMany(i => new Joint[]
        {
            Bushing($"frame {i}", 0, 2 + i, Near(-955, i == 0 ? 395 : -395, -25, 30), true),
            Bushing($"front {i}", 1, 2 + i, Near(65, i == 0 ? 430 : -430, -62, 15), false),
            Bushing($"rear {i}", 1, 2 + i, Near(-65, i == 0 ? 430 : -430, -70, 15), false),
        }),
        TrackBar(), .. Hubs(),
    ];

    private Joint[] LeafSprings() =>
    [
        .. Enumerable.Range(0, 2).SelectMany(i =>
        {
            int side = i == 0 ? 1 : -1;
            Vector3d pin = Near(0, side * 520, -75, 20), half = new(60, 0, 0), pivot = Near(-648, side * 520, 80, 20), end = Near(-690, side * 520, -30, 20);
            double bending = In(20, 60) * 1e8 / 8;
            return new Joint[]
            {
                new Joint.Hinge($"shackle {i}", 0, 2 + i, pivot, Vector3d.UnitY),
                new Joint.Leaf($"front {i}", 1, pin + half, Vector3d.UnitX, Vector3d.UnitZ, 0, Near(606, side * 520, -20, 20), bending, In(100, 500)),
                new Joint.Leaf($"rear {i}", 1, pin - half, -Vector3d.UnitX, Vector3d.UnitZ, 2 + i, end, bending, In(100, 500)),
            };
        }),
        .. Hubs(),
    ];

    private Joint[] SteeredAxle() =>
    [
        .. ThreeLinkAxle(),
        new Joint.Hinge("left kingpin", 1, 2, Near(6, 690, -98, 10), Near(-18, -38, 200, 10)),
        new Joint.Hinge("right kingpin", 1, 3, Near(6, -690, -98, 10), Near(-18, 38, 200, 10)),
        new Joint.Hinge("sector shaft", 0, 4, Near(310, 395, 205, 20), Near(0.08, 0.05, 1, 0.1)),
        new Joint.Rod("drag link", 4, Near(165, 392, 118, 20), 3, Near(150, -640, 62, 20)),
        new Joint.Rod("tie rod", 3, Near(-172, -618, -22, 10), 2, Near(-172, 618, -22, 10)),
        new Joint.Turn("steering", 3, 2, 0),
    ];
}
