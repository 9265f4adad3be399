using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>Compares points of a layout that were measured once more in a second state with where the model has them there.</summary>
public static class PointComparison
{
    /// <summary>One sentence for every point that lies farther from the model's than both half-widths and 2 mm let it.</summary>
    /// <param name="motion">The vehicle in motion.</param>
    public static IEnumerable<ModelAssumption> Of(VehicleMotion motion) =>
        motion.Vehicle.Axles.Where(a => !a.ComparedPoints.IsEmpty).SelectMany(axle => Of(motion, axle));

    private static IEnumerable<ModelAssumption> Of(VehicleMotion motion, Axle axle)
    {
        // A motion was built of it, so its links move and its states can be reached.
        AxleInStates standing = AxleInStates.Build(motion.Vehicle, axle, motion.Parameters).Axle!;
        foreach (string state in axle.ComparedPoints.Select(p => p.State).Distinct()) standing.Stand(axle.OtherStates[state]);
        foreach (ComparedPoint point in axle.ComparedPoints)
        {
            RigidMotion body = PosedPoints.BodyOf(axle, point.Name, motion.Parameters.Span) is var name && name == Vehicle.Chassis ? RigidMotion.Identity : standing.BodyIn(point.State, name);
            double apart = (body.Apply(axle.Points[point.Name].At(motion.Parameters.Span)) - point.Point.At(motion.Parameters.Span)).Length;
            double allowed = HalfWidthMm(motion.Vehicle, axle.Points[point.Name]) + HalfWidthMm(motion.Vehicle, point.Point) + Defaults.ComparedBeyondMm;
            if (!(apart <= allowed)) yield return new ModelAssumption(PathOf(motion.Vehicle, point), Sentence(point, apart, allowed));
        }
    }

    private static string Sentence(ComparedPoint point, double apartMm, double allowedMm) =>
        $"{point.Name} in the state {point.State} was typed {NumberFormat.UpTo(apartMm, 0)} mm from where the model has it, more than the {NumberFormat.UpTo(allowedMm, 0)} mm that its give or take explains: read both again.";

    private static string PathOf(Vehicle vehicle, ComparedPoint point) => vehicle.Parameters.Parameters[point.Point.X.OwnIndex].Reading;

    // A mirror image is as uncertain as its source and its own deviation together.
    private static double HalfWidthMm(Vehicle vehicle, MeasuredPoint point) =>
        new[] { point.X, point.Y, point.Z }.Max(length => length.Indices.Sum(i => vehicle.Parameters.Parameters[i].HalfWidthMm));
}
