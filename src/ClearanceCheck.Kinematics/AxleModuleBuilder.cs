using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
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
    /// <param name="range">How far the steering goes, where that is known already; null to find it out.</param>
    /// <param name="like">The axle as measured, where these are numbers near those: what is alike is not found out again.</param>
    public static (AxleModule? Module, LinkageFault? Fault) Build(Vehicle vehicle, Axle axle, ReadOnlyMemory<double> parameters, PoseCoordinate? range = null, AxleModule? like = null)
    {
        AxleLayout layout = LayoutCatalogue.Of(axle);
        SteeringLinkage? steering = SteeringOf(axle);
        ImmutableArray<string> bodies = BodiesOf(axle);
        int Number(string name) => Math.Max(0, bodies.IndexOf(name));
        var places = new LayoutPlaces(axle, parameters, Number);
        PoseBox box = AxleBox.Of(layout, steering, axle, parameters.Span);
        var coordinates = AxleCoordinates.Of(axle.Name, box);
        Joint[] joints = [.. layout.Joints(places), .. coordinates.Steer is { } steer ? steering?.Joints(layout, places, steer) ?? [FreeLayout.Steered(places, steer)] : [], .. Bar(), Travel(true), Travel(false)];
        joints = [.. joints, .. Wrap(joints, Number(layout.TravelBody(axle, true)))];
        (Linkage? linkage, LinkageFault? fault) = like?.Motion.Linkage.Again(joints) is { } again ? (again, null) : Linkage.Build(bodies, joints, box.Dimensions);
        if (linkage is null) return (null, fault);
        if (coordinates.Steer is { } steered && steering is not null && layout.KingpinBody(true) is not null)
            box = AxleBox.WithRange(box, steered, range ?? like?.Motion.Box.Coordinates[steered] ?? Lock(steered, axle.Steering!));
        ImmutableArray<Follower> followers = [.. vehicle.Parts.SelectMany(part => FollowersOf(vehicle, part, bodies, parameters))];
        var motion = new LinkageMotion(linkage, box, AxleStops.Of(vehicle, axle, bodies, steering, parameters), followers);
        return (new AxleModule(axle, [.. bodies, .. followers.Select(f => f.Name)], motion), null);

        IEnumerable<Joint> Bar() => axle.Bar is { } bar ? AntiRollBars.Joints(layout, bar, places) : [];

        Joint Travel(bool left)
        {
            Wheel wheel = left ? axle.Left : axle.Right;
            return new Joint.Travel(
                $"{AxleLayout.Side(left)} travel", Number(layout.TravelBody(axle, left)), wheel.Hub.At(parameters.Span), left ? 0 : 1, wheel.MeasuredTravelMm(parameters.Span));
        }

        PoseCoordinate Lock(int coordinate, Steering locks)
        {
            (double low, double high) = LockRange.Of(linkage, [Knuckle(true), Knuckle(false)], coordinate, locks.Left, locks.Right);
            return box.Coordinates[coordinate] with { Low = low, High = high };
        }

        (int Knuckle, int Carrier, Vector3d Axis) Knuckle(bool left)
        {
            Vector3d lower = places.At($"kingpin-{AxleLayout.Side(left)}-lower"), upper = places.At($"kingpin-{AxleLayout.Side(left)}-upper");
            return (places.Body(AxleLayout.Knuckle(left)), places.Body(layout.KingpinBody(left)!), (upper - lower).NormalizedOr(Vector3d.UnitZ));
        }

        IEnumerable<Joint> Wrap(Joint[] own, int body)
        {
            if (coordinates.Wrap is { } wrap) yield return new Joint.Torque("axle wrap", body, Vector3d.UnitY, wrap, LeafSpringLayout.WrapNmmPerRad(own));
        }
    }

    /// <summary>Names of an axle's bodies, with the axle's name: the chassis, the layout's, the knuckles that turn on kingpins, the steering's.</summary>
    public static ImmutableArray<string> BodiesOf(Axle axle)
    {
        AxleLayout layout = LayoutCatalogue.Of(axle);
        SteeringLinkage? steering = SteeringOf(axle);
        IEnumerable<string> own = layout.Bodies(axle);
        if (steering is not null && layout.KingpinBody(true) is not null) own = own.Concat([AxleLayout.Knuckle(true), AxleLayout.Knuckle(false)]);
        return [Vehicles.Vehicle.Chassis, .. own.Concat(steering?.Bodies ?? []).Concat(axle.Bar is null ? [] : AntiRollBars.Bodies).Select(b => $"{axle.Name}/{b}")];
    }

    private static SteeringLinkage? SteeringOf(Axle axle) => axle.Steering is { } steered ? SteeringCatalogue.Find(steered.Kind) : null;

    // Pieces of the axle's leaf springs; and tubes between two bodies of which at least one is the axle's own: each keeps its length, so it is a body that turns with the line.
    private static IEnumerable<Follower> FollowersOf(Vehicle vehicle, Part part, ImmutableArray<string> bodies, ReadOnlyMemory<double> parameters)
    {
        if (part.Form is PartForm.LeafSpring spring && bodies.Contains(spring.Seat.Body))
            foreach (LeafPiece piece in LeafPieces.Of(part, parameters.Span, name => Math.Max(0, bodies.IndexOf(name)))) yield return piece;
        bool both = part.Form is PartForm.Shaft or PartForm.Shock { Sleeves: not null };
        if (!both && part.Form is not PartForm.Link) yield break;
        int first = AxleStops.Number(vehicle, bodies, part.Form.Ends[0].Body), second = AxleStops.Number(vehicle, bodies, part.Form.Ends[1].Body);
        if (first < 0 || second < 0 || first == second) yield break;
        Vector3d from = part.Form.Ends[0].At.At(parameters.Span), to = part.Form.Ends[1].At.At(parameters.Span);
        yield return new LineFollower(AxleModule.FollowerName(part.Id, true), first, from, second, to);
        if (both) yield return new LineFollower(AxleModule.FollowerName(part.Id, false), second, to, first, from);
    }
}
