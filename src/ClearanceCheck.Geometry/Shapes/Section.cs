using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A convex part of the half plane that is turned around an axis: a polygon of one to four corners, in order, and a radius around it.</summary>
/// <remarks>Two corners make a wall, four a solid ring; corners on the axis make it solid up to there.</remarks>
/// <param name="Corners">Around the polygon, either way.</param>
/// <param name="Radius">Half of a wall's thickness, mm.</param>
public sealed record Section(ImmutableArray<ProfilePoint> Corners, double Radius)
{
    public const int MaximumCorners = 4;
}
