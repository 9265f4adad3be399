using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Wheels;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>axles</c>: layout, points, travel looked at.</summary>
internal static class AxlesReader
{
    private static readonly LengthRange Travel = new(Length.FromMillimetres(10), Length.FromMillimetres(600), "a wheel's travel one way");

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Required("axles", "the axles inspected");
        foreach ((Placed<string> name, Field value) in field.Entries() ?? [])
        {
            draft.Remember($"axles/{name.Value}", name.Span);
            if (value.Mapping(r => ReadAxle(r, name.Value, draft)) is not { } axle)
            {
                draft.FaultyAxles.Add(name.Value);
                continue;
            }

            draft.Axles.Add(axle);
            draft.Bodies.AddRange(LayoutCatalogue.Find(axle.Layout)!.Bodies(axle).Select(b => $"{axle.Name}/{b}"));
        }

        if (field.IsPresent && field.Entries() is { Count: 0 }) FileMessages.NoAxle(field);
    }

    private static Axle? ReadAxle(MappingReader reader, string name, VehicleDraft draft)
    {
        Placed<string>? layoutId = reader.Required("layout", "how the axle hangs on the chassis").Word([.. LayoutCatalogue.All.Select(l => l.Id)]);
        double? within = Within.Read(reader);
        (MeasuredLength droop, MeasuredLength bump)? limits = reader
            .Required("travel", "how far each wheel is looked at below and above ride height; the stops end it sooner")
            .Mapping(r => TravelLimits(r, name, draft))?.Value;
        Field wheelField = reader.Optional("wheel");
        AxleWheelParts.Announce(wheelField, name, draft);
        WheelDescription? wheel = wheelField.Mapping(r => WheelReader.Read(r, draft));
        if (layoutId is null)
        {
            reader.AllowAll();
            return null;
        }

        AxleLayout layout = LayoutCatalogue.Find(layoutId.Value)!;
        AxleGeometry? geometry = layout is FreeLayout
            ? FreeAxleReader.Read(reader, name, within, draft)
            : LayoutPointsReader.Read(reader, layout, name, within, draft);
        AxleLinks.Read(reader, layout, name, geometry, draft);
        if (geometry is null || limits is not var (droopLimit, bumpLimit)) return null;
        if (Wheels(reader, name, geometry, within, draft) is not var (left, right)) return null;
        if (wheel is not null) AxleWheelParts.Make(wheel, name, geometry, within, draft);
        return new Axle
        {
            Name = name,
            Layout = layoutId.Value,
            Points = geometry.Points,
            FreeBodies = geometry.FreeBodies,
            FreeJoints = geometry.FreeJoints,
            Left = left,
            Right = right,
            DroopLimit = droopLimit,
            BumpLimit = bumpLimit,
        };
    }

    private static Boxed<(MeasuredLength Droop, MeasuredLength Bump)>? TravelLimits(MappingReader reader, string axle, VehicleDraft draft)
    {
        Placed<LengthReading>? droop = reader.Required("droop", "how far below ride height").Length(Travel);
        Placed<LengthReading>? bump = reader.Required("bump", "how far above ride height").Length(Travel);
        double? own = Within.Read(reader);
        if (droop is null || bump is null) return null;
        Within within = Within.For(own, draft.FileWithin, Defaults.TapeMm, "a tape reading");
        return new((draft.Length($"axles/{axle}/travel/droop", droop, within), draft.Length($"axles/{axle}/travel/bump", bump, within)));
    }

    // Travel counts from ride height, so a state that is not ride height has to be tied to it at both wheels.
    private static (Wheel Left, Wheel Right)? Wheels(MappingReader reader, string axle, AxleGeometry geometry, double? within, VehicleDraft draft)
    {
        var wheels = new Wheel?[2];
        for (int side = 0; side < 2; side++)
        {
            string corner = $"{axle}-{(side == 0 ? "left" : "right")}";
            (string body, MeasuredPoint hub) = side == 0 ? geometry.Left : geometry.Right;
            Placed<LengthReading>? ride = draft.States.AtRide?.HubToFender.GetValueOrDefault(corner);
            Placed<LengthReading>? measured = draft.States.Measured?.HubToFender.GetValueOrDefault(corner);
            bool atRide = draft.States.MeasuredIn == MeasuringStates.Ride;
            if (!atRide && (ride is null || measured is null))
            {
                FileMessages.NotTiedToRide(reader, corner, draft.States.MeasuredIn, ride is null);
                continue;
            }

            Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading");
            wheels[side] = new Wheel(
                body,
                hub,
                atRide ? null : draft.Length($"states/{draft.States.MeasuredIn}/hub-to-fender/{corner}", measured!, tape),
                ride is null ? null : draft.Length($"states/{MeasuringStates.Ride}/hub-to-fender/{corner}", ride, tape));
        }

        return wheels is [{ } left, { } right] ? (left, right) : null;
    }
}
