using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Files.States;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>parts</c>.</summary>
internal static class PartsReader
{
    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Required("parts", "the parts, by id");
        IReadOnlyList<(Placed<string> Id, Field Value)> typed = field.Entries() ?? [];
        HashSet<string> ids = [.. typed.Select(t => t.Id.Value)];
        var touches = new List<(string Part, Placed<string> Other)>();
        foreach ((Placed<string> id, Field value) in typed)
        {
            if (draft.FromAxles.TryGetValue(id.Value, out string? axle)) FileMessages.MadeByAxle(draft.Diagnostics, id.Span, id.Value, axle);
            draft.Remember($"parts/{id.Value}", id.Span);
            value.Mapping(r => ReadPart(r, id, ids, draft, touches));
        }

        ShaftLines.Check(draft);
        foreach ((string part, Placed<string> other) in touches)
            if (other.Value == part || !MayBeThere(other.Value, draft)) FileMessages.TouchesNothing(draft.Diagnostics, part, other, draft.Parts.Select(p => p.Id));
        for (int i = 0; i < draft.Parts.Count; i++)
            draft.Parts[i] = draft.Parts[i] with { Touches = [.. draft.Parts[i].Touches.SelectMany(t => draft.Sides.Named(t, draft.Parts[i].Id))] };
        if (draft.Parts.Exists(p => IsOn(p, "exhaust")))
            draft.Assume("bodies/exhaust", "The exhaust is taken as fixed to the chassis: it neither swings on its hangers nor grows with heat here.");
        if (draft.Parts.Exists(p => IsOn(p, "engine")))
            draft.Assume("bodies/engine", "The engine is taken as fixed to the chassis: it does not roll on its mounts here.");
    }

    // The parts that a faulty axle would have made are not known.
    private static bool MayBeThere(string id, VehicleDraft draft) =>
        draft.Places.ContainsKey($"parts/{id}") || draft.FaultyAxles.Exists(axle => id.StartsWith(axle + "-", StringComparison.Ordinal));

    private static bool IsOn(Part part, string body) => part.Body == body || part.Form.Ends.Any(e => e.Body == body);

    private static Part? ReadPart(MappingReader reader, Placed<string> id, HashSet<string> ids, VehicleDraft draft, List<(string Part, Placed<string> Other)> touches)
    {
        Placed<string>? kindId = ReadKind(reader.Required("kind", "what kind of part it is"));
        string? name = reader.Optional("name").Text()?.Value;
        double? within = Within.Read(reader);
        IReadOnlyList<Placed<string>> other = reader.Optional("touches").List(f => f.Id())?.Value ?? [];
        touches.AddRange(other.Select(o => (id.Value, o)));
        Placed<string>? state = StateWord.Read(reader.Optional("in"), draft);
        PartKind? kind = kindId is null ? null : PartKinds.Find(kindId.Value);
        bool isOriginal = reader.Optional("original").Word(["yes"]) is not null;
        Mirror? mirror = PartMirror.Read(reader, kind);
        if (kind is null)
        {
            reader.AllowAll();
            return null;
        }

        ImmutableSortedDictionary<string, double>? properties = PartPropertiesReader.Read(reader, kind);
        string own = mirror is null ? id.Value : Announce(mirror, id, ids, draft);
        if (PartFormReader.Read(new PartSource(reader, kind, own, within, state, draft)) is not var (body, form) || properties is null) return null;
        string called = mirror is null ? name ?? own : PartMirror.NameOf(own, name, mirror.Side);
        var part = new Part { Id = own, Name = called, Kind = kind, Body = body, Form = form, Touches = [.. other.Select(o => o.Value)], Properties = properties, IsOriginal = isOriginal };
        draft.Parts.Add(part);
        if (mirror is not null) AddImage(mirror, id.Value, name, part, ids, draft);
        return part;
    }

    // A part with a side is the part of that side; the id alone stands for both.
    private static string Announce(Mirror mirror, Placed<string> id, HashSet<string> ids, VehicleDraft draft)
    {
        string own = PartMirror.IdOf(id.Value, mirror.Side), image = PartMirror.IdOf(id.Value, mirror.Other);
        draft.Sides.Add(id.Value, mirror);
        if (ids.Contains(own)) FileMessages.SideTypedTwice(draft.Diagnostics, id.Span, id.Value, mirror.Side);
        foreach (string made in new[] { own, image })
        {
            if (draft.FromAxles.TryGetValue(made, out string? axle)) FileMessages.MadeByAxle(draft.Diagnostics, id.Span, made, axle);
            if (!ids.Contains(made)) draft.Remember($"parts/{made}", id.Span);
        }

        return own;
    }

    private static void AddImage(Mirror mirror, string id, string? name, Part source, HashSet<string> ids, VehicleDraft draft)
    {
        string image = PartMirror.IdOf(id, mirror.Other);
        if (ids.Contains(image))
            draft.Assume($"parts/{source.Id}", $"Its mirror image is not made: `{image}` was measured itself.");
        else if (PartMirror.Of(mirror, id, name, source, draft) is { } made)
            draft.Parts.Add(made);
    }

    private static Placed<string>? ReadKind(Field field)
    {
        if (field.Node is not ScalarNode typed || !IsFromAxle(typed.Text)) return field.Word([.. PartKinds.All.Select(k => k.Id).Where(k => !IsFromAxle(k))]);
        FileMessages.FromAxle(field, typed.Text);
        return null;
    }

    private static bool IsFromAxle(string kind) => PartKinds.Find(kind)?.Forms.Contains(PartFormKind.FromAxle) == true;
}
