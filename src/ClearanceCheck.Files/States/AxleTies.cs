using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.States;

/// <summary>Ties the states in which something of an axle was measured to ride height, by hub to fender at both wheels.</summary>
internal static class AxleTies
{
    private static readonly ImmutableArray<string> Sides = ["left", "right"];

    /// <summary>The wheels with their readings in the layout's own state and at ride height; null when a reading is missing, which is said.</summary>
    public static (Wheel Left, Wheel Right)? Wheels(string axle, AxleGeometry geometry, Within tape, SourceSpan place, VehicleDraft draft)
    {
        if (!IsTied(axle, geometry.MeasuredIn, place, draft)) return null;
        return (Wheel(0), Wheel(1));

        Wheel Wheel(int side)
        {
            (string body, MeasuredPoint hub) = side == 0 ? geometry.Left : geometry.Right;
            bool atRide = geometry.MeasuredIn == MeasuringStates.Ride;
            MeasuredLength? measured = atRide ? null : Take(geometry.MeasuredIn, axle, side, tape, draft);
            return new Wheel(body, hub, measured, Take(MeasuringStates.Ride, axle, side, tape, draft));
        }
    }

    /// <summary>How the axle stood in every other state that is tied to ride height at both its wheels.</summary>
    public static ImmutableSortedDictionary<string, AxleState> Others(string axle, string measuredIn, Within tape, VehicleDraft draft)
    {
        var others = ImmutableSortedDictionary.CreateBuilder<string, AxleState>(StringComparer.Ordinal);
        foreach (string state in draft.States.ByName.Keys.Where(s => s != measuredIn))
        {
            bool atRide = state == MeasuringStates.Ride;
            MeasuredLength? left = atRide ? null : Take(state, axle, 0, tape, draft), right = atRide ? null : Take(state, axle, 1, tape, draft);
            if (!Missing(axle, state, draft).Any()) others[state] = new AxleState(state, left, right);
        }

        return others.ToImmutable();
    }

    /// <summary>True when a state is tied to ride height at both wheels; each reading that is missing is said once.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="state">The state in which something on it was measured.</param>
    /// <param name="place">What was measured there.</param>
    /// <param name="draft">The model so far.</param>
    public static bool IsTied(string axle, string state, SourceSpan place, VehicleDraft draft)
    {
        (string Corner, bool RideIsMissing)[] missing = [.. Missing(axle, state, draft)];
        foreach ((string corner, bool rideIsMissing) in missing)
            if (!IsFaulty(rideIsMissing ? MeasuringStates.Ride : state, corner, draft) && draft.Untied.Add((state, corner)))
                FileMessages.NotTiedToRide(draft.Diagnostics, place, corner, state, rideIsMissing);
        return missing.Length == 0;
    }

    /// <summary>How much lower than its left wheel, against ride height, an axle's right wheel stood in a state, mm; 0 where that is not known.</summary>
    public static double TiltMm(string axle, string state, VehicleDraft draft)
    {
        double[] travels = [.. Sides.Select(side => TravelMm($"{axle}-{side}", state, draft))];
        return travels[0] - travels[1];
    }

    private static double TravelMm(string corner, string state, VehicleDraft draft) =>
        Typed(MeasuringStates.Ride, corner, draft) is { } ride && Typed(state, corner, draft) is { } there ? (ride.Value.Length - there.Value.Length).Millimetres : 0;

    // At ride height travel is zero by itself; every other state needs a reading there and one at ride height.
    private static IEnumerable<(string Corner, bool RideIsMissing)> Missing(string axle, string state, VehicleDraft draft)
    {
        if (state == MeasuringStates.Ride) yield break;
        foreach (string corner in Sides.Select(side => $"{axle}-{side}"))
        {
            bool rideIsMissing = Typed(MeasuringStates.Ride, corner, draft) is null;
            if (rideIsMissing || Typed(state, corner, draft) is null) yield return (corner, rideIsMissing);
        }
    }

    private static MeasuredLength? Take(string state, string axle, int side, Within tape, VehicleDraft draft)
    {
        string corner = $"{axle}-{Sides[side]}";
        return Typed(state, corner, draft) is { } height ? draft.Length($"states/{state}/hub-to-fender/{corner}", height, tape) : null;
    }

    private static bool IsFaulty(string state, string corner, VehicleDraft draft) =>
        draft.States.ByName.TryGetValue(state, out TypedState? typed) && typed.HubToFender.TryGetValue(corner, out Placed<LengthReading>? height) && height is null;

    private static Placed<LengthReading>? Typed(string state, string corner, VehicleDraft draft) =>
        draft.States.ByName.GetValueOrDefault(state)?.HubToFender.GetValueOrDefault(corner);
}
