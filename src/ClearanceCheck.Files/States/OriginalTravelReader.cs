using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.States;

/// <summary>Reads <c>hanging</c> and <c>bumped</c> of <c>before-lift</c>: hub to fender at the ends of the travel that the vehicle had.</summary>
internal static class OriginalTravelReader
{
    private static readonly ImmutableArray<string> Keys = ["hanging", "bumped"];

    /// <param name="reader">The entry <c>before-lift</c>.</param>
    /// <param name="ride">Heights at ride height before the lift, as typed.</param>
    /// <param name="taken">The same in the parameter vector.</param>
    /// <param name="tape">How well a height is known.</param>
    /// <param name="draft">The model so far.</param>
    public static void Read(
        MappingReader reader, ImmutableSortedDictionary<string, Placed<LengthReading>?> ride, ImmutableSortedDictionary<string, MeasuredLength> taken, Within tape, VehicleDraft draft)
    {
        var travels = ImmutableSortedDictionary.CreateBuilder<string, OriginalTravel>(StringComparer.Ordinal);
        foreach (string key in Keys)
        {
            Field field = reader.Optional(key);
            if (!field.IsPresent) continue;
            foreach ((Placed<string> corner, _) in field.Entries() ?? [])
                if (!ride.ContainsKey(corner.Value)) FileMessages.NotTiedBeforeLift(draft.Diagnostics, corner);
            foreach ((string corner, Placed<LengthReading>? height) in CornerHeights.Read(field, draft.Diagnostics))
            {
                if (height is null || ride.GetValueOrDefault(corner) is not { } standing || !IsBeyond(height, standing, key == "hanging", draft)) continue;
                OriginalTravel known = travels.GetValueOrDefault(corner) ?? new OriginalTravel(taken[corner], null, null);
                MeasuredLength read = draft.Length($"before-lift/{key}/{corner}", height, tape);
                travels[corner] = key == "hanging" ? known with { Hanging = read } : known with { Bumped = read };
            }
        }

        draft.OriginalTravels = travels.ToImmutable();
    }

    private static bool IsBeyond(Placed<LengthReading> height, Placed<LengthReading> ride, bool isHanging, VehicleDraft draft)
    {
        double farther = (height.Value.Length - ride.Value.Length).Millimetres;
        if (isHanging ? farther > 0 : farther < 0) return true;
        FileMessages.NotBeyondRideBeforeLift(draft.Diagnostics, height.Span, isHanging);
        return false;
    }
}
