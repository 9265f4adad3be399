using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests;

/// <summary>The reference three-link axle as a vehicle, by its layout or spelled out; measured at ride height. Invented coordinates.</summary>
internal sealed class ThreeLinkVehicle
{
    private static readonly ImmutableArray<(string Name, Vector3d Frame, Vector3d Axle)> Rods =
    [
        ("lower-link-left", new(-920, 430, -15), new(-20, 505, -88)),
        ("lower-link-right", new(-920, -430, -15), new(-20, -505, -88)),
        ("upper-link", new(-705, 245, 175), new(-30, 255, 138)),
        ("track-bar", new(85, 470, 172), new(55, -445, 83)),
    ];

    private readonly ParameterVectorBuilder builder = new();

    public double HubToFenderMeasured { get; init; }

    public double HubToFenderRide { get; init; }

    public double Limit { get; init; } = 120;

    public double Within { get; init; } = 2;

    public double HubsAside { get; init; }

    public double MirrorSign { get; init; } = 1;

    public List<Part> Parts { get; } = [];

    public static Vector3d HubLeft { get; } = new(0, 795, 0);

    public static Vector3d HubRight { get; } = new(0, -795, 0);

    public Vehicle Build(string layout, int rods = 4, MeasuredPoint? mirroredHub = null)
    {
        Wheel left = Wheel(HubLeft), right = Wheel(HubRight);
        if (mirroredHub is { } deviation) right = right with { Hub = left.Hub.Mirrored(deviation) };
        bool free = layout == "free";
        var points = ImmutableSortedDictionary.CreateBuilder<string, MeasuredPoint>(StringComparer.Ordinal);
        var joints = ImmutableArray.CreateBuilder<FreeJoint>();
        foreach ((string name, Vector3d frame, Vector3d axle) in Rods.Take(rods))
        {
            MeasuredPoint a = Point(name + "-frame", frame), b = Point(name + "-axle", axle);
            (points[name + "-frame"], points[name + "-axle"]) = (a, b);
            joints.Add(new FreeJoint(name, FreeJointKind.Rod, Vehicle.Chassis, "rear/axle", [a, b], null));
        }

        return new Vehicle
        {
            Description = new VehicleDescription { Name = "test" },
            Scope = ["rear"],
            FixedBodies = ["exhaust"],
            Assumptions = [],
            Readings = [],
            Parts = [.. Parts],
            Axles =
            [
                new Axle
                {
                    Name = "rear",
                    Layout = layout,
                    Points = points.ToImmutable(),
                    FreeBodies = free ? ["axle"] : [],
                    FreeJoints = free ? joints.ToImmutable() : [],
                    Left = left,
                    Right = right,
                    DroopLimit = builder.Length("droop", Limit, 2, true),
                    BumpLimit = builder.Length("bump", Limit, 2, true),
                },
            ],
            Parameters = builder.Build(),
        };
    }

    public Place On(string body, Vector3d at) => new(body, Point("at", at));

    public MeasuredLength Length(double mm) => builder.Length("length", mm, 2, false);

    public MeasuredPoint Deviation(double within) => builder.Point("deviation", Vector3d.Zero, within, false);

    private Wheel Wheel(Vector3d hub) => new(
        "rear/axle",
        Point("hub", new Vector3d(hub.X, hub.Y + HubsAside, hub.Z)),
        HubToFenderMeasured == 0 ? null : builder.Length("measured", HubToFenderMeasured, 2, false),
        HubToFenderRide == 0 ? null : builder.Length("ride", HubToFenderRide, 2, false));

    private MeasuredPoint Point(string path, Vector3d at) => builder.Point(path, new Vector3d(at.X, MirrorSign * at.Y, at.Z), Within, false);
}
