using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>An axle's measured points and bodies, as its layout and its steering make joints of them.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="Parameters">Values of the parameter vector.</param>
/// <param name="BodyNumber">Number of a body by its name with the axle's: <c>rear/axle</c>; 0 for the chassis.</param>
public sealed record LayoutPlaces(Axle Axle, ReadOnlyMemory<double> Parameters, Func<string, int> BodyNumber)
{
    /// <summary>A point of the layout, vehicle frame in the measured state, mm.</summary>
    public Vector3d At(string point) => Axle.Points[point].At(Parameters.Span);

    /// <summary>A length of the layout, mm.</summary>
    public double Figure(string name) => Axle.Figures[name].At(Parameters.Span);

    /// <summary>The number of a body by its name without the axle's.</summary>
    public int Body(string name) => name == Vehicle.Chassis ? 0 : BodyNumber($"{Axle.Name}/{name}");
}
