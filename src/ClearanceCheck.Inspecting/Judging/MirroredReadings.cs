using System.Collections.Immutable;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Points that nobody measured because the other side was taken for them.</summary>
internal static class MirroredReadings
{
    /// <summary>A sentence for each mirrored point that carries enough of a value's give or take, with the reading that lifts it.</summary>
    public static IEnumerable<string> Matter(Vehicle vehicle, Measurement measured, double share)
    {
        if (measured.Places.IsEmpty) return [];
        ImmutableHashSet<string> mirrored = Of(vehicle);
        return measured.Places[0].Shares.Where(s => s.Share >= share && mirrored.Contains(s.Reading))
            .Select(s => $"{Capital(Words.Reading(vehicle, s.Reading))} was not measured: the other side's was mirrored.");
    }

    private static ImmutableHashSet<string> Of(Vehicle vehicle) =>
    [
        .. vehicle.Axles.SelectMany(a => a.Points.Values).Concat(vehicle.Parts.SelectMany(p => p.Form.Ends.Select(e => e.At)))
            .Select(p => p.X.Deviation).OfType<int>().Select(i => vehicle.Parameters.Parameters[i].Reading),
    ];

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
