using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What holds bodies together or sets them. Points are body coordinates: those of the vehicle frame in the measured state, mm.</summary>
/// <remarks>Body 0 is the chassis. A closed family: the equations of all stand in <see cref="JointEquations"/>.</remarks>
public abstract record Joint
{
    private protected Joint(string name, int equations) => (Name, Equations) = (name, equations);

    public string Name { get; }

    /// <summary>How many equations it makes.</summary>
    public int Equations { get; }

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

    /// <summary>The height of a body's point over its height at ride is the pose's coordinate: wheel travel, bump positive.</summary>
    /// <param name="RideOffsetMm">Height of the point in the measured state less its height at ride, mm.</param>
    public sealed record Travel(string Name, int Body, Vector3d Point, int Coordinate, double RideOffsetMm) : Joint(Name, 1);

    /// <summary>Holds the spin of a link about the line through its two ball ends, which nothing else decides, where it was measured.</summary>
    /// <param name="Spin">Direction of the line in the measured state.</param>
    public sealed record SpinHold(string Name, int Body, Vector3d Spin) : Joint(Name, 1);
}
