using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>A vehicle with one axle of any layout, measured at ride height.</summary>
internal sealed class LayoutVehicle(string layout)
{
    private readonly ParameterVectorBuilder builder = new();
    private readonly Dictionary<string, Vector3d> points = [];
    private readonly Dictionary<string, double> figures = [];

    public Steering? Steering { get; init; }

    public WrapRange? Wrap { get; init; }

    public AntiRollBar? Bar { get; init; }

    public double Limit { get; init; } = 120;

    public LayoutVehicle At(string point, double x, double y, double z)
    {
        points[point] = new(x, y, z);
        return this;
    }

    public LayoutVehicle At(string point, Vector3d at) => At(point, at.X, at.Y, at.Z);

    /// <summary>A point on the left and its mirror image; <c>*</c> stands for the side.</summary>
    public LayoutVehicle Both(string point, double x, double y, double z) =>
        At(point.Replace("*", "left"), x, y, z).At(point.Replace("*", "right"), x, -y, z);

    public LayoutVehicle Both(string point, Vector3d at) => Both(point, at.X, at.Y, at.Z);

    public void TakePointsOf(LayoutVehicle other)
    {
        foreach ((string name, Vector3d at) in other.points) points[name] = at;
    }

    public LayoutVehicle Figure(string name, double mm)
    {
        figures[name] = mm;
        return this;
    }

    /// <summary>The axle in motion, with the values it was made of.</summary>
    public (AxleModule Module, double[] Parameters) Module()
    {
        Vehicle vehicle = Build();
        double[] parameters = vehicle.Parameters.Nominal.ToArray();
        (AxleModule? module, Mechanics.Linkages.LinkageFault? fault) = AxleModuleBuilder.Build(vehicle, vehicle.Axles[0], parameters);
        fault.ShouldBeNull(fault is null ? "" : $"{fault.Kind} {string.Join(", ", fault.Names)}");
        return (module!, parameters);
    }

    public Vehicle Build()
    {
        AxleLayout found = LayoutCatalogue.Find(layout)!;
        SteeringLinkage? steering = Steering is null ? null : SteeringCatalogue.Find(Steering.Kind);
        foreach (LayoutPoint point in found.Points.Concat(steering?.Points(found) ?? []))
            points.ShouldContainKey(point.Name);
        ImmutableSortedDictionary<string, MeasuredPoint> measured = points.ToImmutableSortedDictionary(
            p => p.Key, p => builder.Point($"axles/front/points/{p.Key}", p.Value, 4, false), StringComparer.Ordinal);
        foreach (LayoutFigure figure in found.Figures) figures.TryAdd(figure.Name, figure.DefaultMm ?? 0);
        return new Vehicle
        {
            Description = new VehicleDescription { Name = "test" },
            Scope = ["front"],
            FixedBodies = [],
            Assumptions = [],
            Readings = [],
            Parts = [],
            Axles =
            [
                new Axle
                {
                    Name = "front",
                    Layout = layout,
                    Points = measured,
                    Figures = figures.ToImmutableSortedDictionary(f => f.Key, f => builder.Length($"axles/front/{f.Key}", f.Value, 5, false), StringComparer.Ordinal),
                    Steering = Steering,
                    Wrap = Wrap,
                    Bar = Bar,
                    FreeBodies = [],
                    FreeJoints = [],
                    Left = new Wheel(found.WheelBody("front", Steering is not null, true), measured["hub-left"], null, null),
                    Right = new Wheel(found.WheelBody("front", Steering is not null, false), measured["hub-right"], null, null),
                    DroopLimit = builder.Length("droop", Limit, 2, true),
                    BumpLimit = builder.Length("bump", Limit, 2, true),
                },
            ],
            Parameters = builder.Build(),
        };
    }
}
