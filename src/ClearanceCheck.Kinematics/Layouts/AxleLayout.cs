using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>How an axle hangs on the chassis: which points it needs and which joints it makes of them.</summary>
/// <remarks>Coordinates of its pose space: 0 left travel, 1 right travel, mm from ride height, bump positive.</remarks>
public abstract class AxleLayout
{
    /// <summary>The word in files.</summary>
    public abstract string Id { get; }

    /// <summary>What it is, in a few words.</summary>
    public abstract string Meaning { get; }

    /// <summary>Points to be measured besides the hubs; empty for a layout whose file spells out its joints.</summary>
    public abstract ImmutableArray<LayoutPoint> Points { get; }

    /// <summary>Its moving bodies, without the axle's name.</summary>
    public abstract ImmutableArray<string> Bodies(Axle axle);

    /// <summary>Its joints besides the two travels.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="parameters">Values of the parameter vector.</param>
    /// <param name="bodyNumber">Number of a body by its name with the axle's: <c>rear/axle</c>; 0 for the chassis.</param>
    public abstract IEnumerable<Joint> Joints(Axle axle, ReadOnlyMemory<double> parameters, Func<string, int> bodyNumber);
}
