using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>Every measured point of a vehicle with the body it rides on.</summary>
public static class PosedPoints
{
    /// <summary>All points of all axles and parts, in the order of the model; paths as in the parameter vector.</summary>
    public static IEnumerable<RidingPoint> Of(Vehicle vehicle) =>
        vehicle.Axles.SelectMany(axle => Of(vehicle, axle)).Concat(vehicle.Parts.SelectMany(Of)).Select(p => new RidingPoint(Path(vehicle, p.At), p.Body, p.At)).DistinctBy(p => p.Path);

    /// <summary>The body that a point of a layout or a steering linkage rides on, with the axle's name.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="point">The point's name: <c>track-bar-axle</c>.</param>
    /// <param name="parameters">Values of the parameter vector: a drag link's knuckle is the one on its side.</param>
    /// <exception cref="ArgumentException">The axle has no such point.</exception>
    public static string BodyOf(Axle axle, string point, ReadOnlySpan<double> parameters)
    {
        AxleLayout layout = LayoutCatalogue.Of(axle);
        IEnumerable<LayoutPoint> points = layout.Points.Concat(axle.Steering is { } steered ? SteeringCatalogue.Find(steered.Kind)?.Points(layout) ?? [] : [])
            .Concat(axle.Bar is { } bar ? AntiRollBars.Points(layout, bar) : []);
        string body = points.FirstOrDefault(p => p.Name == point)?.Body ?? throw new ArgumentException($"The axle has no point {point}.", nameof(point));
        if (body == Vehicles.Vehicle.Chassis) return body;
        return $"{axle.Name}/{(body == SteeringLinkage.EitherKnuckle ? AxleLayout.Knuckle(axle.Points[point].At(parameters).Y > 0) : body)}";
    }

    private static IEnumerable<Place> Of(Vehicle vehicle, Axle axle)
    {
        foreach ((string name, MeasuredPoint point) in axle.Points) yield return new Place(BodyOf(axle, name, vehicle.Parameters.Nominal), point);
        foreach (FreeJoint joint in axle.FreeJoints)
        {
            yield return new Place(joint.FirstBody, joint.At[0]);
            if (joint.At.Length > 1) yield return new Place(joint.SecondBody, joint.At[1]);
            if (joint.Axis is { } axis) yield return new Place(joint.FirstBody, axis);
        }

        // A layout with named points has its hubs among them.
        if (!axle.Points.IsEmpty) yield break;
        yield return new Place(axle.Left.Body, axle.Left.Hub);
        yield return new Place(axle.Right.Body, axle.Right.Hub);
    }

    private static IEnumerable<Place> Of(Part part) => part.Form switch
    {
        PartForm.Chain chain => chain.Path.Select(at => new Place(part.Body, at)),
        PartForm.Plate plate => plate.Outline.Select(at => new Place(part.Body, at)),
        PartForm.Box box => [new Place(part.Body, box.Corner), new Place(part.Body, box.Opposite)],
        PartForm.Turned turned => [new Place(part.Body, turned.From), new Place(part.Body, turned.To)],
        PartForm.Shaft shaft => shaft.Ends.Concat(shaft.Aheads),
        // A link of the layout has the layout's own points.
        _ => part.Form.Ends,
    };

    private static string Path(Vehicle vehicle, MeasuredPoint point) => vehicle.Parameters.Parameters[point.X.OwnIndex].Reading;
}

/// <summary>A measured point with the body it rides on.</summary>
/// <param name="Path">Its path in the model: <c>axles/rear/points/hub-left</c>.</param>
/// <param name="Body">The body's name: <c>rear/axle</c>.</param>
/// <param name="At">The point, vehicle frame in the measured state.</param>
public readonly record struct RidingPoint(string Path, string Body, MeasuredPoint At);
