using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What holds bodies together or sets them. Points are body coordinates: those of the vehicle frame in the measured state, mm.</summary>
/// <remarks>
/// Body 0 is the chassis. A closed family: the equations of all stand in <see cref="JointEquations"/>, the forces of the soft ones in
/// <see cref="JointForces"/>. Soft joints are taken as free of load in the measured state.
/// </remarks>
public abstract record Joint
{
    private protected Joint(string name, int equations) => (Name, Equations) = (name, equations);

    public string Name { get; }

    /// <summary>How many exact equations it makes.</summary>
    public int Equations { get; }

    /// <summary>True for what sets a coordinate of the pose.</summary>
    public bool IsSetting => this is Travel or Turn or Shift;

    /// <summary>True for what gives under load.</summary>
    public bool IsSoft => this is Spring or Bushing or Leaf;

    /// <summary>A rod of fixed length between a point of one body and a point of another: a control arm seen end to end, a track bar.</summary>
    public sealed record Rod(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint) : Joint(Name, 1)
    {
        /// <summary>Length between the two points in the measured state, mm.</summary>
        public double LengthMm => (SecondPoint - FirstPoint).Length;
    }

    /// <summary>Two bodies share a point.</summary>
    public sealed record Ball(string Name, int FirstBody, int SecondBody, Vector3d Point) : Joint(Name, 3);

    /// <summary>Two bodies share a line: a kingpin, a pivot.</summary>
    public sealed record Hinge(string Name, int FirstBody, int SecondBody, Vector3d Point, Vector3d Axis) : Joint(Name, 5);

    /// <summary>One body slides along another without turning: a rack in its housing.</summary>
    public sealed record Slide(string Name, int FirstBody, int SecondBody, Vector3d Point, Vector3d Axis) : Joint(Name, 5);

    /// <summary>The height of a body's point over its height at ride is the pose's coordinate: wheel travel, bump positive.</summary>
    /// <param name="RideOffsetMm">Height of the point in the measured state less its height at ride, mm.</param>
    public sealed record Travel(string Name, int Body, Vector3d Point, int Coordinate, double RideOffsetMm) : Joint(Name, 1);

    /// <summary>The angle by which a hinged body has turned is the pose's coordinate, rad: a pitman arm, a knuckle about its kingpin.</summary>
    /// <param name="Body">The body; a hinge carries it.</param>
    /// <param name="OffsetRad">The coordinate's value in the measured state.</param>
    public sealed record Turn(string Name, int Body, int Coordinate, double OffsetRad) : Joint(Name, 1);

    /// <summary>How far a sliding body has slid is the pose's coordinate, mm: a rack.</summary>
    /// <param name="Body">The body; a slide carries it.</param>
    /// <param name="OffsetMm">The coordinate's value in the measured state.</param>
    public sealed record Shift(string Name, int Body, int Coordinate, double OffsetMm) : Joint(Name, 1);

    /// <summary>Holds the spin of a link about the line through its two ball ends, which nothing else decides, where it was measured.</summary>
    /// <param name="Spin">Direction of the line in the measured state.</param>
    public sealed record SpinHold(string Name, int Body, Vector3d Spin) : Joint(Name, 1);

    /// <summary>A rod that gives along its length: a link with its bushings in series. Energy k (length - measured length)^2 / 2.</summary>
    /// <param name="StiffnessNPerMm">k.</param>
    public sealed record Spring(string Name, int FirstBody, Vector3d FirstPoint, int SecondBody, Vector3d SecondPoint, double StiffnessNPerMm) : Joint(Name, 0)
    {
        /// <summary>Length free of load, mm.</summary>
        public double LengthMm => (SecondPoint - FirstPoint).Length;
    }

    /// <summary>A bushing: a housing on the first body, a pin on the second; it gives in three directions and about three axes.</summary>
    /// <param name="FirstBody">The body that carries the housing.</param>
    /// <param name="SecondBody">The body that carries the pin.</param>
    /// <param name="Point">Its middle.</param>
    /// <param name="Axes">Its own axes in the measured state: takes them to the vehicle's.</param>
    /// <param name="Stiffness">Along its axes, N/mm; zero where it does not hold.</param>
    /// <param name="TurningStiffness">About its axes, N mm/rad, on the rotation vector of the second body against the first.</param>
    /// <param name="RidesOnHousing">True when the axes of its stiffness turn with the first body, as real ones do; false when they stay with the chassis.
    /// Those of its turning stiffness always turn with the first body.</param>
    public sealed record Bushing(
        string Name, int FirstBody, int SecondBody, Vector3d Point, Rotation Axes, Vector3d Stiffness, Vector3d TurningStiffness, bool RidesOnHousing)
        : Joint(Name, 0);

    /// <summary>Half of a leaf spring: from the edge of its clamp on the axle to its eye, of fixed length, bent in one curvature all along.</summary>
    /// <remarks>See <see cref="LeafShape"/>. Its bending and its sideways give are free of load in the measured state.</remarks>
    /// <param name="SeatBody">The axle.</param>
    /// <param name="Clamp">Where the free leaf begins.</param>
    /// <param name="Along">Direction in which it leaves the clamp.</param>
    /// <param name="Up">The side to which positive curvature bends it; made square to <paramref name="Along"/>.</param>
    /// <param name="EyeBody">What carries the eye: the chassis or a shackle.</param>
    /// <param name="Eye">The eye's middle.</param>
    /// <param name="BendingStiffness">E I, N mm^2.</param>
    /// <param name="SidewaysNPerMm">What holds the eye sideways, N/mm.</param>
    public sealed record Leaf(
        string Name, int SeatBody, Vector3d Clamp, Vector3d Along, Vector3d Up, int EyeBody, Vector3d Eye, double BendingStiffness, double SidewaysNPerMm)
        : Joint(Name, 1);

    /// <summary>A body between two travels that goes where it was measured to go, smoothly through the measured positions.</summary>
    /// <param name="Point">The point whose way along x and y the guide tells: the middle between the hubs.</param>
    /// <param name="Path">The ways and turns by the two travels.</param>
    public sealed record Guide(string Name, int Body, Vector3d Point, GuidePath Path) : Joint(Name, 4);

    /// <summary>A torque on a body against the chassis, in proportion to the pose's coordinate: axle wrap.</summary>
    /// <param name="Axis">Its axis, which stays with the chassis.</param>
    /// <param name="NmmPerUnit">Torque for one unit of the coordinate, N mm.</param>
    public sealed record Torque(string Name, int Body, Vector3d Axis, int Coordinate, double NmmPerUnit) : Joint(Name, 0);

    /// <summary>The bodies it joins; the chassis among them where it holds a body against that.</summary>
    internal ReadOnlySpan<int> Bodies => this switch
    {
        Rod j => new[] { j.FirstBody, j.SecondBody },
        Ball j => new[] { j.FirstBody, j.SecondBody },
        Hinge j => new[] { j.FirstBody, j.SecondBody },
        Slide j => new[] { j.FirstBody, j.SecondBody },
        Spring j => new[] { j.FirstBody, j.SecondBody },
        Bushing j => new[] { j.FirstBody, j.SecondBody },
        Leaf j => new[] { j.SeatBody, j.EyeBody },
        Travel j => new[] { j.Body },
        Turn j => new[] { j.Body },
        Shift j => new[] { j.Body },
        SpinHold j => new[] { j.Body },
        Guide j => new[] { j.Body },
        Torque j => new[] { j.Body },
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The same joint in a linkage that numbers its bodies and coordinates otherwise; null where what it sets or follows is not there.</summary>
    /// <param name="body">The new number of each body.</param>
    /// <param name="coordinate">The new number of each coordinate, -1 where it is left out.</param>
    internal Joint? Renumbered(Func<int, int> body, Func<int, int> coordinate) => this switch
    {
        Rod j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Ball j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Hinge j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Slide j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Spring j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Bushing j => j with { FirstBody = body(j.FirstBody), SecondBody = body(j.SecondBody) },
        Leaf j => j with { SeatBody = body(j.SeatBody), EyeBody = body(j.EyeBody) },
        Travel j => coordinate(j.Coordinate) is >= 0 and var own ? j with { Body = body(j.Body), Coordinate = own } : null,
        Turn j => coordinate(j.Coordinate) is >= 0 and var own ? j with { Body = body(j.Body), Coordinate = own } : null,
        Shift j => coordinate(j.Coordinate) is >= 0 and var own ? j with { Body = body(j.Body), Coordinate = own } : null,
        Torque j => coordinate(j.Coordinate) is >= 0 and var own ? j with { Body = body(j.Body), Coordinate = own } : null,
        SpinHold j => j with { Body = body(j.Body) },
        Guide j => j.Path.Renumbered(coordinate) is { } path ? j with { Body = body(j.Body), Path = path } : null,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The coordinate that it sets or loads a body with; null for what holds in every pose alike.</summary>
    internal int? SetCoordinate => this switch
    {
        Travel j => j.Coordinate,
        Turn j => j.Coordinate,
        Shift j => j.Coordinate,
        Torque j => j.Coordinate,
        _ => null,
    };

    /// <summary>The points at which it holds a body, measured state.</summary>
    internal IEnumerable<Vector3d> PointsOn(int body) => this switch
    {
        Rod j => Two(body, j.FirstBody, j.FirstPoint, j.SecondBody, j.SecondPoint),
        Spring j => Two(body, j.FirstBody, j.FirstPoint, j.SecondBody, j.SecondPoint),
        Leaf j => Two(body, j.SeatBody, j.Clamp, j.EyeBody, j.Eye),
        Ball j => One(body, j.FirstBody, j.SecondBody, j.Point),
        Hinge j => One(body, j.FirstBody, j.SecondBody, j.Point),
        Slide j => One(body, j.FirstBody, j.SecondBody, j.Point),
        Bushing j => One(body, j.FirstBody, j.SecondBody, j.Point),
        Travel j => One(body, j.Body, j.Body, j.Point),
        Guide j => One(body, j.Body, j.Body, j.Point),
        _ => [],
    };

    private static IEnumerable<Vector3d> One(int body, int first, int second, Vector3d point) => body == first || body == second ? [point] : [];

    private static IEnumerable<Vector3d> Two(int body, int first, Vector3d firstPoint, int second, Vector3d secondPoint)
    {
        if (body == first) yield return firstPoint;
        if (body == second) yield return secondPoint;
    }
}
