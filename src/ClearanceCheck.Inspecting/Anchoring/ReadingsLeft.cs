using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Anchoring;

/// <summary>Direct readings that contradict the points, and those that no finding rests on: both are said out loud.</summary>
internal static class ReadingsLeft
{
    public static IEnumerable<NotInspectedItem> List(Vehicle vehicle, ImmutableArray<PlannedMeasurement> planned, Measurement[] measurements)
    {
        HashSet<string> used = new(StringComparer.Ordinal);
        for (int i = 0; i < measurements.Length; i++)
            foreach (DirectReading reading in measurements[i].Readings)
            {
                used.Add(reading.Id);
                if (reading.Disagrees)
                    yield return new NotInspectedItem($"Which is right of the gap between {string.Join(" and ", planned[i].Subject.Select(p => p.Name))}", ReadingCards.Contradiction(reading));
                else if (reading.NotUsed is { } why)
                    yield return new NotInspectedItem($"The gap read between {string.Join(" and ", planned[i].Subject.Select(p => p.Name))}", $"it was not used: {why}");
            }

        foreach (DirectGap gap in vehicle.DirectGaps.Where(g => !used.Contains(g.Id)))
            yield return new NotInspectedItem($"The gap read between {Name(vehicle, gap.Between[0])} and {Name(vehicle, gap.Between[1])} (`{gap.Id}`)", "no pair that a rule asks for was judged by it");
    }

    private static string Name(Vehicle vehicle, string side) => vehicle.Parts.FirstOrDefault(p => p.Id == side)?.Name ?? side;
}
