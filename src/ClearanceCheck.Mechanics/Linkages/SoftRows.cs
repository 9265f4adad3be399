using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What each soft joint feels of a displacement, in all directions in which it has a stiffness.</summary>
/// <remarks>
/// Each direction has a load of its own, a stiffness s and the equation s give = load, as an exact joint has give = 0: however far apart
/// stiff and yielding directions are, the equations stay regular, and a proof over a block does not drown in forces that cancel.
/// </remarks>
internal static class SoftRows
{
    public const int Most = 6;

    /// <summary>Stiffness of each of the joint's directions, N/mm; zero where it does not hold. Turning ones as at <see cref="Linkage.RotationLengthMm"/>.</summary>
    public static ImmutableArray<double> Stiffness(Joint joint)
    {
        const double Square = Linkage.RotationLengthMm * Linkage.RotationLengthMm;
        switch (joint)
        {
            case Joint.Spring spring:
                return [spring.StiffnessNPerMm];
            case Joint.Bushing b:
                return [b.Stiffness.X, b.Stiffness.Y, b.Stiffness.Z, b.TurningStiffness.X / Square, b.TurningStiffness.Y / Square, b.TurningStiffness.Z / Square];
            case Joint.Leaf leaf:
                // E I l (curvature change)^2 / 2 with the give l^2 / 2 times that change: the stiffness of the give is 4 E I / l^3.
                double length = LeafShape.MeasuredLengthMm(leaf);
                return [4 * leaf.BendingStiffness / (length * length * length), leaf.SidewaysNPerMm];
            default:
                return [];
        }
    }

    /// <summary>Writes the give in each direction, mm.</summary>
    public static void Gives<T>(Joint joint, in Placement<T> at, Span<T> gives)
        where T : unmanaged, IReal<T>
    {
        switch (joint)
        {
            case Joint.Spring spring:
                Vector3<T> along = at.Point(spring.SecondBody, spring.SecondPoint) - at.Point(spring.FirstBody, spring.FirstPoint);
                gives[0] = T.Sqrt(along.LengthSquared) - T.From(spring.LengthMm);
                break;
            case Joint.Bushing bushing:
                int frame = bushing.RidesOnHousing ? bushing.FirstBody : 0;
                Vector3<T> apart = at.Point(bushing.SecondBody, bushing.Point) - at.Point(bushing.FirstBody, bushing.Point);
                Vector3<T> turned = bushing.TurningStiffness == Vector3d.Zero ? default : Turned(bushing, at, out _);
                for (int k = 0; k < 3; k++)
                {
                    Vector3d own = Axis(bushing, k);
                    gives[k] = Vector3<T>.Dot(at.Direction(frame, own), apart);
                    gives[3 + k] = Vector3<T>.Dot(Vector3<T>.From(own), turned) * T.From(Linkage.RotationLengthMm);
                }

                break;
            case Joint.Leaf leaf:
                Vector3<T> tip = LeafShape.Tip(leaf, at, out _, out _, out _);
                Vector3d measured = LeafShape.MeasuredTip(leaf);
                double length = LeafShape.MeasuredLengthMm(leaf);
                gives[0] = LeafShape.Turn(tip.Z, length) - T.From(LeafShape.Turn(new Real(measured.Z), length).Value);
                gives[1] = tip.Y - T.From(measured.Y);
                break;
        }
    }

    /// <summary>Writes the equation of each direction that has a stiffness: its give is its load over its stiffness.</summary>
    /// <param name="stiffness">Of each direction, N/mm.</param>
    /// <param name="reference">What a load of 1 mm stands for, N/mm.</param>
    public static void Equations<T>(Joint joint, in Placement<T> at, ReadOnlySpan<double> stiffness, double reference, ReadOnlySpan<T> loads, Span<T> equations)
        where T : unmanaged, IReal<T>
    {
        Gives(joint, at, equations);
        for (int k = 0; k < stiffness.Length; k++) equations[k] = (equations[k] * T.From(stiffness[k] / reference)) - loads[k];
        if (joint is not Joint.Bushing bushing || !HoldsEverywhere(bushing)) return;
        // Told by the loads, the place of the pin in its housing stays small however far both move: over a block their two places would not.
        double least = Math.Min(stiffness[0], Math.Min(stiffness[1], stiffness[2]));
        Vector3<T> apart = at.Point(bushing.SecondBody, bushing.Point) - at.Point(bushing.FirstBody, bushing.Point);
        Vector3<T> left = (apart - GiveByLoads(bushing, at, loads, reference)) * T.From(least / reference);
        (equations[0], equations[1], equations[2]) = (left.X, left.Y, left.Z);
    }

    /// <summary>True for a bushing that has a stiffness along all of its axes.</summary>
    public static bool HoldsEverywhere(Joint.Bushing bushing) => bushing.Stiffness.X > 0 && bushing.Stiffness.Y > 0 && bushing.Stiffness.Z > 0;

    /// <summary>Where the pin is against the housing's point, chassis frame, by its loads.</summary>
    public static Vector3<T> GiveByLoads<T>(Joint.Bushing bushing, in Placement<T> at, ReadOnlySpan<T> loads, double reference)
        where T : unmanaged, IReal<T>
    {
        int frame = bushing.RidesOnHousing ? bushing.FirstBody : 0;
        Vector3<T> give = default;
        for (int k = 0; k < 3; k++) give += at.Direction(frame, Axis(bushing, k)) * (loads[k] * T.From(reference / bushing.Stiffness[k]));
        return give;
    }

    /// <summary>The rotation vector of a bushing's pin against its housing, in the housing's frame, rad, and its Cayley vector.</summary>
    public static Vector3<T> Turned<T>(Joint.Bushing bushing, in Placement<T> at, out Vector3<T> cayley)
        where T : unmanaged, IReal<T>
    {
        cayley = at.RelativeCayley(bushing.FirstBody, bushing.SecondBody);
        return cayley * (ArcSeries.Ratio(cayley.LengthSquared) * T.From(2));
    }

    /// <summary>One of a bushing's axes in the measured state.</summary>
    public static Vector3d Axis(Joint.Bushing bushing, int k) => bushing.Axes.Apply(k == 0 ? Vector3d.UnitX : k == 1 ? Vector3d.UnitY : Vector3d.UnitZ);
}
