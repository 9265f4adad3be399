using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>Where a part can be on its body: the corners of a region that holds it.</summary>
/// <remarks>
/// Of a part with a shape it is the box around that. Of one without it is taken to lie between the points that were measured on its
/// body, and the report says that this is so.
/// </remarks>
/// <param name="Body">The body that the region rides on.</param>
/// <param name="IsAssumed">True where nobody measured the part.</param>
/// <param name="Indices">Numbers that the corners are made of.</param>
/// <param name="Corners">The corners for given values of the parameter vector, in the body's own coordinates; always as many.</param>
internal sealed record MovedRegion(string Body, bool IsAssumed, ImmutableArray<int> Indices, Func<ReadOnlyMemory<double>, Vector3d[]> Corners)
{
    private static readonly Vector3d[] Axes = [Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ];

    /// <summary>Null where nothing is known of where on its body the part is, or where it rides on two.</summary>
    public static MovedRegion? Of(VehicleMotion motion, Part part)
    {
        if (part.Form is PartForm.Unshaped) return BetweenPoints(motion, part.Body);
        if (motion.CarriersOf(part) is not [var body] || !PartShapes.HasShape(part)) return null;
        return new MovedRegion(body, false, [.. ParameterUse.Of(motion.Vehicle, [part])], parameters => Box(motion, part, parameters));
    }

    private static MovedRegion? BetweenPoints(VehicleMotion motion, string body)
    {
        ImmutableArray<MeasuredPoint> points = [.. PosedPoints.Of(motion.Vehicle).Where(p => p.Body == body).Select(p => p.At)];
        if (points.IsEmpty || motion.Find(body).Module is null) return null;
        return new MovedRegion(body, true, [.. points.SelectMany(p => p.Indices).Distinct()], parameters => [.. points.Select(p => p.At(parameters.Span))]);
    }

    private static Vector3d[] Box(VehicleMotion motion, Part part, ReadOnlyMemory<double> parameters)
    {
        double[] low = [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity];
        double[] high = [double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity];
        foreach (Solid solid in PartShapes.Of(part, motion, parameters.Span).Select(m => m.Swept).OfType<RigidSolid>().Select(s => s.Solid))
            for (int d = 0; d < 3; d++)
            {
                high[d] = Math.Max(high[d], solid.Support(0, Axes[d]));
                low[d] = Math.Min(low[d], -solid.Support(0, -Axes[d]));
            }

        return
        [
            .. from x in new[] { low[0], high[0] }
               from y in new[] { low[1], high[1] }
               from z in new[] { low[2], high[2] }
               select new Vector3d(x, y, z),
        ];
    }
}
