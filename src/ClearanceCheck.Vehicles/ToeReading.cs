using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles;

/// <summary>An axle's total toe as a shop reads it, at ride height with the wheels straight ahead: from wheel to wheel before and behind the axle, at the hubs' height.</summary>
/// <param name="Front">From wheel to wheel in front of the axle, mm.</param>
/// <param name="Rear">The same behind it, mm.</param>
/// <param name="Over">From the places in front to those behind on one wheel, mm: the rim's diameter, the length of a toe board.</param>
public sealed record ToeReading(MeasuredLength Front, MeasuredLength Rear, MeasuredLength Over)
{
    /// <summary>The places of its numbers.</summary>
    public IEnumerable<int> Indices => [.. Front.Indices, .. Rear.Indices, .. Over.Indices];

    /// <summary>The toe of both wheels together, rad, plus for toe-in.</summary>
    /// <remarks>Wheels toed in by t each bring the places in front nearer by 2 over/2 sin t together, and those behind apart by as much: rear - front = 2 over sin t. The total is 2 t.</remarks>
    public double TotalRad(ReadOnlySpan<double> parameters) =>
        2 * Trigonometry.Asin(Math.Clamp((Rear.At(parameters) - Front.At(parameters)) / (2 * Over.At(parameters)), -1, 1));
}
