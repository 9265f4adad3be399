using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>How a moving body is carried: freely, with six unknowns, or turning on or sliding along another body, with one; or driven, with none.</summary>
/// <remarks>A hinge that carries a body holds by construction: it needs no equations, and its proof has five unknowns less.</remarks>
/// <param name="Parent">The body it turns on or slides along; 0 for a free one.</param>
/// <param name="Point">A point of the line it turns about, measured state, mm.</param>
/// <param name="Axis">Direction of that line, or of the sliding, in the measured state, length one.</param>
/// <param name="FirstUnknown">Index of its first unknown.</param>
internal readonly record struct Carriage(CarriageKind Kind, int Parent, Vector3d Point, Vector3d Axis, int FirstUnknown)
{
    public int Unknowns => Kind switch { CarriageKind.Chassis or CarriageKind.Driven => 0, CarriageKind.Free => 6, _ => 1 };
}
