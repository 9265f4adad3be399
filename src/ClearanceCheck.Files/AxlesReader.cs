using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Axles;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Files.States;
using ClearanceCheck.Files.Wheels;
using ClearanceCheck.Kinematics;
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
            draft.Bodies.AddRange(AxleModuleBuilder.BodiesOf(axle).Where(b => b != Vehicle.Chassis));
        }

        if (field.IsPresent && field.Entries() is { Count: 0 }) FileMessages.NoAxle(field);
    }

    private static Axle? ReadAxle(MappingReader reader, string name, VehicleDraft draft)
    {
        Placed<string>? layoutId = reader.Required("layout", "how the axle hangs on the chassis").Word([.. LayoutCatalogue.All.Select(l => l.Id)]);
        double? within = Within.Read(reader);
        Placed<string>? measuredIn = StateWord.Read(reader.Optional("measured-in"), draft);
        Mirror? mirror = Mirror.Read(reader);
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
        if (layout.Assumption is { } resting) draft.Assume($"axles/{name}/layout", $"The {name} axle {resting}");
        Field steeringField = reader.Optional("steering"), barField = reader.Optional("anti-roll-bar");
        AxleGeometry? geometry = layout is FreeLayout
            ? FreeAxleReader.Read(reader, name, within, measuredIn?.Value ?? draft.States.MeasuredIn, draft)
            : new LayoutPointsReader(layout, steeringField, barField, name, within, mirror, draft).Read(reader, measuredIn);
        Steering? steering = SteeringReader.Read(steeringField, layout, name, geometry, draft);
        ImmutableSortedDictionary<string, MeasuredLength>? figures = FiguresReader.Read(reader, layout, name, within, draft);
        bool leaves = LeavesReader.Read(reader.Optional("leaves"), layout, name, geometry, figures, draft);
        Boxed<WrapRange?>? wrap = AxleWrapReader.Read(reader.Optional("axle-wrap"), layout, name, draft);
        if (mirror is not null && layout is FreeLayout) FileMessages.FreeIsNotMirrored(mirror.Place);
        AxleLinks.Read(reader, layout, name, geometry, draft);
        Field toeField = reader.Optional("toe");
        ToeReading? toe = toeField.Mapping(r => ToeReader.Read(r, name, geometry, draft));
        bool isSound = (toe is not null || !toeField.IsPresent) && AntiRollBarReader.Check(barField, layout, name, draft) && figures is not null && leaves && wrap is not null && (steering is not null || !steeringField.IsPresent);
        if (geometry is null || limits is not var (droopLimit, bumpLimit) || !isSound) return null;
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading");
        if (AxleTies.Wheels(name, geometry, tape, reader.Node.Heading, draft) is not var (left, right)) return null;
        if (mirror is not null) AxleTilt.Check(mirror, name, geometry.MeasuredIn, draft);
        if (wheel is not null)
        {
            AxleWheelParts.Make(wheel, name, geometry, within, draft);
            draft.Tires[name] = wheel;
        }

        return new Axle
        {
            Name = name,
            Layout = layoutId.Value,
            Points = geometry.Points,
            Figures = figures!,
            Steering = steering,
            Toe = toe,
            Wrap = wrap!.Value,
            Bar = AntiRollBarReader.BarOf(barField, layout),
            MeasuredIn = geometry.MeasuredIn,
            OtherStates = AxleTies.Others(name, geometry.MeasuredIn, tape, draft),
            ComparedPoints = geometry.ComparedPoints,
            FreeBodies = geometry.FreeBodies,
            FreeJoints = geometry.FreeJoints,
            FreeTravelBodies = geometry.FreeTravelBodies,
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
}
