using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Shapes;

/// <summary>The wire of a coil spring: a helix around the line between the middles of its seats, each point carried by both seats in proportion to its height.</summary>
/// <remarks>
/// Where the wire leaves its seat is not measured, so it may pass any place on its cylinder: as many helices as close the cylinder are
/// laid side by side, up one and down the next. The wire is as thick as it is and what the helix rises above its chords.
/// </remarks>
internal static class CoilShape
{
    private const int StationsPerTurn = 16;

    // A coil in droop opens its turns wider than they were measured.
    private const double OpensBy = 1.5;
    private const int MostHelices = 12;

    public static ShapeMember Of(PartForm.Coil coil, VehicleMotion motion, ReadOnlySpan<double> parameters)
    {
        Vector3d lower = coil.Lower.At.At(parameters), upper = coil.Upper.At.At(parameters);
        double wire = coil.Wire.At(parameters), radius = (coil.OutsideDiameter.At(parameters) - wire) / 2;
        int stations = Math.Max(StationsPerTurn, (int)Math.Ceiling(coil.Turns * StationsPerTurn));
        int helices = Math.Clamp((int)Math.Ceiling(OpensBy * (upper - lower).Length / coil.Turns / wire), 1, MostHelices);
        Vector3d axis = (upper - lower).NormalizedOr(Vector3d.UnitZ), e = axis.AnyPerpendicular(), f = Vector3d.Cross(axis, e);
        var points = ImmutableArray.CreateBuilder<Vector3d>(helices * (stations + 1));
        var shares = ImmutableArray.CreateBuilder<double>(helices * (stations + 1));
        for (int helix = 0; helix < helices; helix++)
            for (int i = 0; i <= stations; i++)
            {
                double share = (double)(helix % 2 == 0 ? i : stations - i) / stations;
                (double sine, double cosine) = Trigonometry.SinCos(2 * Math.PI * ((coil.Turns * share) + ((double)helix / helices)));
                points.Add(Vector3d.Lerp(lower, upper, share) + (e * (radius * cosine)) + (f * (radius * sine)));
                shares.Add(share);
            }

        // An arc rises above its chord by R (1 - cos(half of its step)), which is less than R step^2 / 8.
        double step = 2 * Math.PI * coil.Turns / stations, sagitta = radius * step * step / 8;
        int near = motion.Find(coil.Lower.Body).Number, far = motion.Find(coil.Upper.Body).Number;
        double half = (wire / 2) + sagitta;
        return new ShapeMember(
            [coil.Lower.Body, coil.Upper.Body],
            near == far ? new RigidSolid(near, new CapsuleChain(points, half)) : new BlendedChain(near, far, points.MoveToImmutable(), shares.MoveToImmutable(), half));
    }
}
