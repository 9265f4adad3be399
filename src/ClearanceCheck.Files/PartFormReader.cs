using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads what a part looks like or stops, by its kind.</summary>
internal static class PartFormReader
{
    private static readonly LengthRange Diameter = new(Length.FromMillimetres(0.5), Length.FromMillimetres(1000), "an outside diameter");
    private static readonly LengthRange StopLength = new(Length.FromMillimetres(1), Length.FromMillimetres(2000), "a length of a stop");
    private static readonly LengthRange Crush = new(Length.FromMillimetres(0), Length.FromMillimetres(500), "what a stop gives when crushed");
    private static readonly LengthRange HoseLength = new(Length.FromMillimetres(10), Length.FromMillimetres(5000), "a hose's free length");

    private static readonly Dictionary<string, double> CrushShares = new(StringComparer.Ordinal)
    {
        ["rubber"] = Defaults.RubberCrush,
        ["foam"] = Defaults.FoamCrush,
        ["metal"] = 0,
    };

    public static (string Body, PartForm? Form)? Read(MappingReader reader, PartKind kind, string id, double? within, VehicleDraft draft) => kind.Form switch
    {
        PartFormKind.Chain => Chain(reader, id, within, draft),
        PartFormKind.Hose => Hose(reader, id, within, draft),
        PartFormKind.Shock => Shock(reader, id, within, draft),
        PartFormKind.BumpStop => BumpStop(reader, id, within, draft),
        _ => throw new UnreachableException(),
    };

    private static (string Body, PartForm? Form)? Chain(MappingReader reader, string id, double? within, VehicleDraft draft)
    {
        Placed<string>? body = BodyWord.Read(reader.Required("body", "the body it is fixed to"), draft);
        Placed<LengthReading>? diameter = reader.Required("outside-diameter", "its outside diameter").Length(Diameter);
        ImmutableArray<MeasuredPoint>? path = ChainPathReader.Read(reader, id, within, draft);
        Field clips = reader.Optional("clips");
        IReadOnlyList<int> held = clips.PositiveIntegers()?.Value ?? [];
        if (path is { } points && held.FirstOrDefault(n => n > points.Length) is > 0 and var beyond) FileMessages.ClipBeyondPath(clips, beyond, points.Length);
        if (body is null || diameter is null || path is null) return null;
        MeasuredLength size = draft.Length($"parts/{id}/outside-diameter", diameter, Size, widen: false);
        return (body.Value, new PartForm.Chain(path.Value, size, [.. held.Select(n => n - 1)]));
    }

    private static (string Body, PartForm? Form)? Hose(MappingReader reader, string id, double? within, VehicleDraft draft)
    {
        Within surface = Within.For(within, draft.FileWithin, Defaults.SurfaceMm, "a surface of a pipe or hose");
        Place? upper = End(reader, "upper", "where the rubber leaves the upper ferrule", id, surface, draft);
        Place? lower = End(reader, "lower", "where the rubber leaves the lower ferrule", id, surface, draft);
        Placed<LengthReading>? free = reader.Required("free-length", "the length of the rubber alone, ferrule to ferrule").Length(HoseLength);
        Placed<LengthReading>? diameter = reader.Required("outside-diameter", "its outside diameter").Length(Diameter);
        if (upper is null || lower is null || free is null || diameter is null) return null;
        if (upper.At.At(draft.Parameters.Build().Nominal) == lower.At.At(draft.Parameters.Build().Nominal)) FileMessages.SamePlaceTwice(reader, "the hose");
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading");
        return (upper.Body, new PartForm.Hose(
            upper, lower, draft.Length($"parts/{id}/free-length", free, tape), draft.Length($"parts/{id}/outside-diameter", diameter, Size, widen: false)));
    }

    private static (string Body, PartForm? Form)? Shock(MappingReader reader, string id, double? within, VehicleDraft draft)
    {
        Within joint = Within.For(within, draft.FileWithin, Defaults.JointCentreMm, "a hidden joint centre");
        Place? upper = End(reader, "upper", "the middle of its upper mount", id, joint, draft);
        Place? lower = End(reader, "lower", "the middle of its lower mount", id, joint, draft);
        Placed<LengthReading>? closed = reader.Required("closed", "its length fully closed, mount to mount").Length(StopLength);
        Placed<LengthReading>? open = reader.Required("open", "its length fully open, mount to mount").Length(StopLength);
        if (closed is not null && open is not null && closed.Value.Length >= open.Value.Length) FileMessages.ClosedNotShorter(reader, closed, open);
        if (upper is null || lower is null || closed is null || open is null) return null;
        Within length = Within.For(within, null, Defaults.StopLengthMm, "a stop's length");
        draft.Assumptions.Add(new ModelAssumption(
            $"parts/{id}", $"Its bushings are taken to give {NumberFormat.UpTo(Defaults.ShockBushingMm, 1)} mm at each end before it ends the travel (common practice, no source)."));
        return (upper.Body, new PartForm.Shock(upper, lower, draft.Length($"parts/{id}/closed", closed, length), draft.Length($"parts/{id}/open", open, length)));
    }

    private static (string Body, PartForm? Form)? BumpStop(MappingReader reader, string id, double? within, VehicleDraft draft)
    {
        Within surface = Within.For(within, draft.FileWithin, Defaults.SurfaceMm, "a plate's surface");
        Place? frame = End(reader, "frame", "where it is seated on the frame", id, surface, draft);
        Place? axle = End(reader, "axle", "the middle of the pad it meets on the axle", id, surface, draft);
        Placed<LengthReading>? height = reader.Required("height", "its free height from the seat").Length(StopLength);
        Field material = reader.Optional("material"), typedCrush = reader.Optional("crush");
        Placed<double>? share = material.Choice(CrushShares);
        Placed<LengthReading>? crush = typedCrush.Length(Crush);
        if (frame is null || axle is null || height is null || (material.IsPresent && share is null) || (typedCrush.IsPresent && crush is null)) return null;
        if (crush is not null && crush.Value.Length >= height.Value.Length) FileMessages.CrushedToNothing(typedCrush);
        Within length = Within.For(within, null, Defaults.StopLengthMm, "a stop's height");
        draft.Assumptions.Add(new ModelAssumption($"parts/{id}", "It acts straight up and down and stops the axle when its typed or assumed crush is used up."));
        MeasuredLength free = draft.Length($"parts/{id}/height", height, length);
        MeasuredLength given = crush is null
            ? AssumedCrush(id, height.Value.Length.Millimetres, share?.Value, draft)
            : draft.Length($"parts/{id}/crush", crush, Within.For(within, null, Defaults.CrushMm, "a stop's crush"));
        return (frame.Body, new PartForm.BumpStop(frame, axle, free, given));
    }

    private static MeasuredLength AssumedCrush(string id, double heightMm, double? share, VehicleDraft draft)
    {
        double crush = heightMm * (share ?? 0), half = Math.Min(Defaults.CrushMm, crush);
        string what = share is null ? "No material typed: taken as metal, which gives nothing" : $"Crush not typed: taken to give {NumberFormat.UpTo(crush, 1)} mm";
        draft.Assumptions.Add(new ModelAssumption($"parts/{id}/crush", $"{what}, {NumberFormat.UpTo(half, 1)} mm each way (common practice, no source)."));
        return draft.Computed($"parts/{id}/crush", crush, half, true);
    }

    private static Within Size { get; } = new(Defaults.SizeMm, true, "a size from a caliper or a maker");

    private static Place? End(MappingReader reader, string key, string what, string id, Within within, VehicleDraft draft) =>
        reader.Required(key, what).Mapping(r =>
        {
            Placed<string>? body = BodyWord.Read(r.Required("body", "the body it is on"), draft);
            Placed<LengthTriple>? at = r.Required("at", "the place").Triple();
            return body is null || at is null ? null : new Place(body.Value, draft.Point($"parts/{id}/{key}", at, within));
        });
}
