using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>A wheel of a free layout.</summary>
/// <param name="Body">What it is bolted to, with the axle's name.</param>
/// <param name="Hub">The middle of its mounting face.</param>
/// <param name="TravelOn">The body that its travel is read on; null where that is what it is bolted to.</param>
internal sealed record FreeWheel(string Body, MeasuredPoint Hub, string? TravelOn)
{
    public string TravelBody => TravelOn ?? Body;
}
