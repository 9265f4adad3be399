using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>
/// An axle on four 12 m long rods, three along x and one along y, all level at ride height: over a few centimetres it moves straight up
/// and down (60 mm of travel pull it 0.15 mm aside), so gaps and their uncertainty can be worked out by hand.
/// </summary>
internal sealed class ByHand
{
    private readonly ParameterVectorBuilder builder = new();
    private readonly List<Part> parts = [];
    private int named;

    public double RodWithin { get; init; } = 1;

    public double Limit { get; init; } = 200;

    /// <summary>Half-width of hub to fender: at ride height, 640 mm, where all but stated points was measured, and 60 mm lower in the state "hanging".</summary>
    public double? HeightWithin { get; init; }

    public List<StatedPoint> Stated { get; } = [];

    public List<DirectGap> Gaps { get; } = [];

    public static double U(double halfWidth) => halfWidth / Math.Sqrt(3);

    public MeasuredPoint Point(Vector3d at, double within) => builder.Point($"point-{++named}", at, within, false);

    public MeasuredLength Length(double mm, double within) => builder.Length($"length-{++named}", mm, within, false);

    public Part Add(string id, string kind, string body, PartForm form)
    {
        var part = new Part { Id = id, Name = id, Kind = PartKinds.Find(kind)!, Body = body, Form = form, Touches = [] };
        parts.Add(part);
        return part;
    }

    public VehicleMotion Motion()
    {
        ImmutableArray<FreeJoint> joints =
        [
            Rod("left", new(12000, 500, 0), new(0, 500, 0)),
            Rod("right", new(12000, -500, 0), new(0, -500, 0)),
            Rod("upper", new(12000, 0, 200), new(0, 0, 200)),
            Rod("across", new(0, 12000, 0), new(0, 0, 0)),
        ];
        MeasuredLength? Height(double mm) => HeightWithin is { } within ? Length(mm, within) : null;
        var hanging = new AxleState("hanging", Height(700), Height(700));
        var vehicle = new Vehicle
        {
            StatedPoints = [.. Stated],
            DirectGaps = [.. Gaps],
            Description = new VehicleDescription { Name = "by hand" },
            Scope = ["rear"],
            FixedBodies = ["exhaust"],
            Assumptions = [],
            Readings = [],
            Parts = [.. parts],
            Axles =
            [
                new Axle
                {
                    Name = "rear",
                    Layout = "free",
                    Points = ImmutableSortedDictionary<string, MeasuredPoint>.Empty,
                    MeasuredIn = "ride",
                    OtherStates = Stated.Count == 0 && !Gaps.Exists(g => g.State == "hanging") ? ImmutableSortedDictionary<string, AxleState>.Empty : ImmutableSortedDictionary<string, AxleState>.Empty.Add("hanging", hanging),
                    FreeBodies = ["axle"],
                    FreeJoints = joints,
                    Left = new Wheel("rear/axle", Point(new(0, 700, 0), RodWithin), null, Height(640)),
                    Right = new Wheel("rear/axle", Point(new(0, -700, 0), RodWithin), null, Height(640)),
                    DroopLimit = builder.Length("droop", Limit, 4, false),
                    BumpLimit = builder.Length("bump", Limit, 4, false),
                },
            ],
            Parameters = builder.Build(),
        };
        return VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();
    }

    private FreeJoint Rod(string name, Vector3d frame, Vector3d axle) =>
        new(name, FreeJointKind.Rod, Vehicle.Chassis, "rear/axle", [Point(frame, RodWithin), Point(axle, RodWithin)], null);
}
