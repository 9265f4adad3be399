using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Anchoring;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Travel;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>What the inspection did not look at, said out loud.</summary>
internal static class NotInspected
{
    public static ImmutableArray<NotInspectedItem> List(VehicleMotion motion, ImmutableArray<PlannedMeasurement> measured, Measurement[] measurements, ImmutableArray<ReachCard> reach, ImmutableArray<TravelTable> travel)
    {
        Vehicle vehicle = motion.Vehicle;
        return
        [
            .. travel.SelectMany(BeyondAtRideHeight),
            .. reach.Where(r => r.EndsHighest == TravelTableBuilder.NoStop && r.Unit == "mm").Select(r => new NotInspectedItem(
                $"{r.Label}: bump beyond {Words.Length(r.Highest)}", "nothing in the file stops the wheel there; the travel looked at ends at a typed number")),
            .. reach.Where(r => r.EndsLowest == TravelTableBuilder.NoStop && r.Unit == "mm").Select(r => new NotInspectedItem(
                $"{r.Label}: droop beyond {Words.Length(-r.Lowest)}", "nothing in the file stops the wheel there; the travel looked at ends at a typed number")),
            .. ReadingsLeft.List(vehicle, measured, measurements),
            .. UncoveredPairs(motion, measured),
            .. vehicle.Parts.Where(p => !PartShapes.HasShape(p)).Select(p => new NotInspectedItem($"What {p.Name} touches", PartShapes.WhyNone(p))),
            .. vehicle.Axles.Where(a => !vehicle.Parts.Any(p => p.Form is PartForm.Link or PartForm.LeafSpring && p.Id.StartsWith(a.Name + "-", StringComparison.Ordinal))).Select(a => new NotInspectedItem(
                $"The links of the {a.Name} axle ({LayoutCatalogue.Find(a.Layout)!.Meaning})", "the file does not say how thick they are; what they touch was not checked")),
            new NotInspectedItem("Heat", "no temperature was estimated; only distances were checked"),
            .. vehicle.IsWhole ? [] : Rest(vehicle),
        ];
    }

    private static IEnumerable<NotInspectedItem> Rest(Vehicle vehicle) =>
    [
        new NotInspectedItem(
            "The rest of the vehicle", $"this inspection covers parts of the {string.Join(" and ", vehicle.Scope)} axle only: nothing is said of {(vehicle.Axles.Any(a => a.Steering is not null) ? "" : "steering, ")}{(vehicle.Parts.Any(p => p.Form is PartForm.Tire) ? "" : "tires, ")}{(vehicle.Parts.Any(p => p.Form is PartForm.Shaft) ? "" : "driveshafts, ")}wiring, other axles, or any part not in the file"),
    ];

    // Either the readings of ride height or those of the stop are wrong, and then so is everything that the stop cuts off.
    private static IEnumerable<NotInspectedItem> BeyondAtRideHeight(TravelTable travel) =>
        travel.Rows.Where(r => r.Pose == ExtremePoses.RideHeight).SelectMany(r => r.Passed).Select(p => new NotInspectedItem(
            $"At ride height the {travel.Axle} axle already stands {Words.Length(p.BeyondMm)} beyond this stop: {p.Words}",
            "the readings contradict each other: measure the lengths of this stop and hub to fender again; until they agree, nothing that this stop ends can be relied on"));

    private static IEnumerable<NotInspectedItem> UncoveredPairs(VehicleMotion motion, ImmutableArray<PlannedMeasurement> measured)
    {
        var gap = new GapQuantity();
        ImmutableHashSet<string> covered = [.. measured.Where(m => m.Quantity.Id == gap.Id).Select(m => Key(m.Subject[0], m.Subject[1]))];
        ImmutableArray<Part> parts = motion.Vehicle.Parts;
        for (int i = 0; i < parts.Length; i++)
            for (int j = i + 1; j < parts.Length; j++)
            {
                (Part a, Part b) = (parts[i], parts[j]);
                if (gap.Refuses(a, b) is not null || a.Form is PartForm.Unshaped || b.Form is PartForm.Unshaped || covered.Contains(Key(a, b)) || MeantContact.WholePair(a, b)) continue;
                if (PairPlan.For(motion, a, b) is { Module: null })
                {
                    if (gap.At(new MeasureRequest(motion, a, b, double.PositiveInfinity), []) is < 0 and var overlap)
                        yield return new NotInspectedItem($"{a.Name} and {b.Name} overlap by {Words.Length(-overlap)} as measured", "no rule of the library covers this pair; measure both again, or look whether they touch");
                    continue;
                }

                yield return new NotInspectedItem($"The gap between {a.Name} and {b.Name}", "no rule of the library covers this pair, though they move against each other");
            }
    }

    private static string Key(Part a, Part b) => string.CompareOrdinal(a.Id, b.Id) < 0 ? $"{a.Id}--{b.Id}" : $"{b.Id}--{a.Id}";
}
