using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Reads the tire that was fitted before the lift, and says how far it and the present ones roll in a turn.</summary>
internal static class OriginalTireReader
{
    // A new tire may be smaller than its size says by some 3 percent of its diameter: half of that each way. Common practice, no source.
    private const double SizeWithin = 0.015;

    public static bool IsTyped(MappingReader reader) => reader.Has("tire") | reader.Has("tire-circumference");

    public static void Read(MappingReader reader, double? within, VehicleDraft draft)
    {
        Field sizeField = reader.Optional("tire"), aroundField = reader.Optional("tire-circumference");
        Placed<TireSize>? size = TireReader.ReadSize(sizeField, "`tire-circumference`");
        Placed<LengthReading>? around = aroundField.Length(TireReader.Circumference);
        if (size is null && around is null) return;
        if (size is not null && around is not null && !TireReader.Fits(aroundField, around, size.Value)) return;
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading around the tire");
        MeasuredLength before = Around("before-lift/tire-circumference", size, around, tape, draft);
        var changes = ImmutableSortedDictionary.CreateBuilder<string, RollingChange>(StringComparer.Ordinal);
        foreach ((string axle, WheelDescription wheel) in draft.Tires)
        {
            Within own = Within.For(wheel.Within ?? within, draft.FileWithin, Defaults.TapeMm, "a tape reading around the tire");
            changes[axle] = new RollingChange(Around($"axles/{axle}/wheel/tire-circumference", wheel.Tire.Size, wheel.Tire.Circumference, own, draft), before);
        }

        draft.RollingChanges = changes.ToImmutable();
    }

    private static MeasuredLength Around(string path, Placed<TireSize>? size, Placed<LengthReading>? around, Within tape, VehicleDraft draft)
    {
        if (around is not null) return draft.Length(path, around, tape);
        double mm = Math.PI * size!.Value.OverallDiameterMm;
        draft.Assume(path, $"Taken from the size {size.Span.Text}: {NumberFormat.UpTo(mm, 0)} mm around as new.");
        return draft.Derived(path, size.Span.Text, size.Span, mm, new Within(SizeWithin * mm, true, "a new tire beside its size"));
    }
}
