using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>Makes the moving axle of a vehicle's description.</summary>
public static class AxleModuleBuilder
{
    /// <summary>The axle in motion, or why its links don't make it move.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="axle">One of its axles.</param>
    /// <param name="parameters">Values of the parameter vector: the measured ones, or ones changed to see what a reading does.</param>
    public static (AxleModule? Module, LinkageFault? Fault) Build(Vehicle vehicle, Axle axle, ReadOnlyMemory<double> parameters)
    {
        AxleLayout layout = LayoutCatalogue.Find(axle.Layout) ?? throw new ArgumentException($"No layout {axle.Layout}.", nameof(axle));
        ImmutableArray<string> bodies = [Vehicles.Vehicle.Chassis, .. layout.Bodies(axle).Select(b => $"{axle.Name}/{b}")];
        int BodyNumber(string name) => Math.Max(0, bodies.IndexOf(name));
        IEnumerable<Joint> joints = layout.Joints(axle, parameters, BodyNumber).Append(Travel(axle.Left, 0)).Append(Travel(axle.Right, 1));
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(bodies, joints, 2);
        if (linkage is null) return (null, fault);
        double low = -axle.DroopLimit.At(parameters.Span), high = axle.BumpLimit.At(parameters.Span);
        var box = new PoseBox([new($"{axle.Name}.left", false, low, high), new($"{axle.Name}.right", false, low, high)]);
        ImmutableArray<Follower> followers = [.. vehicle.Parts.SelectMany(part => FollowersOf(vehicle, part, bodies, parameters))];
        var motion = new LinkageMotion(linkage, box, Stops(vehicle, bodies, parameters), followers);
        return (new AxleModule(axle, [.. bodies, .. followers.Select(f => f.Name)], motion), null);

        Joint Travel(Wheel wheel, int coordinate) => new Joint.Travel(
            coordinate == 0 ? "left travel" : "right travel", BodyNumber(wheel.Body), wheel.Hub.At(parameters.Span), coordinate, wheel.MeasuredTravelMm(parameters.Span));
    }

    // Tubes between two bodies of which at least one is the axle's own: each keeps its length, so it is a body that turns with the line.
    private static IEnumerable<Follower> FollowersOf(Vehicle vehicle, Part part, ImmutableArray<string> bodies, ReadOnlyMemory<double> parameters)
    {
        bool both = part.Form is PartForm.Shaft or PartForm.Shock { Sleeves: not null };
        if (!both && part.Form is not PartForm.Link) yield break;
        int first = Number(vehicle, bodies, part.Form.Ends[0].Body), second = Number(vehicle, bodies, part.Form.Ends[1].Body);
        if (first < 0 || second < 0 || first == second) yield break;
        Vector3d from = part.Form.Ends[0].At.At(parameters.Span), to = part.Form.Ends[1].At.At(parameters.Span);
        yield return new Follower(AxleModule.FollowerName(part.Id, true), first, from, second, to);
        if (both) yield return new Follower(AxleModule.FollowerName(part.Id, false), second, to, first, from);
    }

    private static int Number(Vehicle vehicle, ImmutableArray<string> bodies, string body) => vehicle.FixedBodies.Contains(body) ? 0 : bodies.IndexOf(body);

    private static ImmutableArray<Stop> Stops(Vehicle vehicle, ImmutableArray<string> bodies, ReadOnlyMemory<double> parameters) =>
        [.. vehicle.Parts.SelectMany(part => StopsOf(vehicle, part, bodies, parameters))];

    private static IEnumerable<Stop> StopsOf(Vehicle vehicle, Part part, ImmutableArray<string> bodies, ReadOnlyMemory<double> parameters)
    {
        switch (part.Form)
        {
            case PartForm.Shock shock when Numbers(shock.Upper, shock.Lower) is var (upper, lower):
                double open = shock.Open.At(parameters.Span) + (2 * Defaults.ShockBushingMm);
                double closed = shock.Closed.At(parameters.Span) - (2 * Defaults.ShockBushingMm);
                yield return new LongestStop($"{part.Id} at full length", upper, At(shock.Upper), lower, At(shock.Lower), open);
                yield return new ShortestStop($"{part.Id} bottomed", upper, At(shock.Upper), lower, At(shock.Lower), closed);
                break;
            case PartForm.BumpStop stop when Numbers(stop.Frame, stop.Axle) is var (frame, axle):
                double least = stop.Height.At(parameters.Span) - stop.Crush.At(parameters.Span);
                yield return new HeightStop($"{part.Id} crushed", frame, At(stop.Frame), axle, At(stop.Axle), Vector3d.UnitZ, least);
                break;
        }

        Vector3d At(Place place) => place.At.At(parameters.Span);

        // A stop of this axle has one end on it; its other end is on the chassis or on another of its bodies.
        (int First, int Second)? Numbers(Place first, Place second)
        {
            int a = Number(vehicle, bodies, first.Body), b = Number(vehicle, bodies, second.Body);
            return a < 0 || b < 0 || a == b ? null : (a, b);
        }
    }
}
