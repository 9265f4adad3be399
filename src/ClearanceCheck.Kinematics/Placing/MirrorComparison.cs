using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>Says where an axle does not stand in the middle of the vehicle, so that images over the vehicle's centre plane are off on it.</summary>
/// <remarks>
/// A point at y on an axle whose middle lies at m has its true image at 2 m - y; the model has it at -y and is off by 2 m. Where both
/// hubs were measured m is known. Where one is the image of the other nobody knows m, but the links say how far the axle moves aside
/// between the state it was measured in and ride height: in one of the two it does not stand in the middle.
/// </remarks>
public static class MirrorComparison
{
    /// <summary>One sentence for every axle, and every part on one, whose mirror images may be farther off than was said.</summary>
    /// <param name="motion">The vehicle in motion.</param>
    public static IEnumerable<ModelAssumption> Of(VehicleMotion motion) => motion.Modules.SelectMany(module => Of(motion, module));

    private static IEnumerable<ModelAssumption> Of(VehicleMotion motion, AxleModule module)
    {
        Axle axle = module.Axle;

        // Wheels on two bodies don't move aside together.
        if (axle.Left.Body != axle.Right.Body || Middle(motion, module) is not var (middleMm, isKnown)) yield break;
        foreach ((string path, string what, double withinMm) in Images(motion, axle))
            if (!(2 * Math.Abs(middleMm) <= withinMm)) yield return new ModelAssumption(path, Sentence(axle, what, middleMm, withinMm, isKnown));
    }

    // y of the middle between the hubs: as measured where both were, else at ride height where the measured state has it at zero.
    private static (double Mm, bool IsKnown)? Middle(VehicleMotion motion, AxleModule module)
    {
        Vector3d left = module.Axle.Left.Hub.At(motion.Parameters.Span), right = module.Axle.Right.Hub.At(motion.Parameters.Span);
        if (!module.Axle.Left.Hub.IsMirrored && !module.Axle.Right.Hub.IsMirrored) return ((left.Y + right.Y) / 2, true);
        SolvedPose ride = module.Motion.At((ReadOnlySpan<double>)new double[module.Motion.Box.Dimensions]);
        if (!ride.IsSolved) return null;
        RigidMotion Wheel(Wheel wheel) => ride[module.Bodies.IndexOf(wheel.Body)];
        return ((Wheel(module.Axle.Left).Apply(left).Y + Wheel(module.Axle.Right).Apply(right).Y) / 2, false);
    }

    private static IEnumerable<(string Path, string What, double WithinMm)> Images(VehicleMotion motion, Axle axle)
    {
        Vehicle vehicle = motion.Vehicle;
        MeasuredPoint[] points = [.. axle.Points.Where(p => p.Value.IsMirrored && PosedPoints.BodyOf(axle, p.Key, motion.Parameters.Span) != Vehicle.Chassis).Select(p => p.Value)];
        if (points.Length > 0) yield return ($"axles/{axle.Name}/mirror", "the mirror images on it", WithinMm(vehicle, points[0]));
        foreach (Part part in vehicle.Parts)
            if (part.Form.Ends.FirstOrDefault(e => e.At.IsMirrored && e.Body.StartsWith(axle.Name + "/", StringComparison.Ordinal)) is { } end)
                yield return ($"parts/{part.Id}", "its mirror image on the axle", WithinMm(vehicle, end.At));
    }

    private static string Sentence(Axle axle, string what, double middleMm, double withinMm, bool isKnown)
    {
        string aside = $"{NumberFormat.UpTo(Math.Abs(middleMm), 0)} mm {(middleMm > 0 ? "left" : "right")}", off = NumberFormat.UpTo(2 * Math.Abs(middleMm), 0);
        string more = $"more than the {NumberFormat.UpTo(withinMm, 1)} mm that was said";
        return isKnown
            ? $"By its hubs the axle {axle.Name} stood {aside} of the centre plane as it was measured, so {what} may be {off} mm off, {more}: measure both sides."
            : $"From the state {axle.MeasuredIn} to ride height the axle {axle.Name} moves {aside}: if it stands in the middle at ride height, {what} may be {off} mm off, {more}: measure both hubs, or at ride height.";
    }

    private static double WithinMm(Vehicle vehicle, MeasuredPoint image) => vehicle.Parameters.Parameters[image.Y.OwnIndex].HalfWidthMm;
}
