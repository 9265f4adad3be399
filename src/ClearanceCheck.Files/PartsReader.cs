using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>parts</c>.</summary>
internal static class PartsReader
{
    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Required("parts", "the parts, by id");
        var touches = new List<(string Part, Placed<string> Other)>();
        foreach ((Placed<string> id, Field value) in field.Entries() ?? [])
        {
            if (draft.FromAxles.TryGetValue(id.Value, out string? axle)) FileMessages.MadeByAxle(draft.Diagnostics, id.Span, id.Value, axle);
            draft.Remember($"parts/{id.Value}", id.Span);
            if (value.Mapping(r => ReadPart(r, id.Value, draft, touches)) is { } part) draft.Parts.Add(part);
        }

        foreach ((string part, Placed<string> other) in touches)
            if (other.Value == part || !MayBeThere(other.Value, draft)) FileMessages.TouchesNothing(draft.Diagnostics, part, other, draft.Parts.Select(p => p.Id));
        if (draft.Parts.Exists(p => IsOn(p, "exhaust")))
            draft.Assume("bodies/exhaust", "The exhaust is taken as fixed to the chassis: it neither swings on its hangers nor grows with heat here.");
        if (draft.Parts.Exists(p => IsOn(p, "engine")))
            draft.Assume("bodies/engine", "The engine is taken as fixed to the chassis: it does not roll on its mounts here.");
    }

    // The parts that a faulty axle would have made are not known.
    private static bool MayBeThere(string id, VehicleDraft draft) =>
        draft.Places.ContainsKey($"parts/{id}") || draft.FaultyAxles.Exists(axle => id.StartsWith(axle + "-", StringComparison.Ordinal));

    private static bool IsOn(Part part, string body) => part.Body == body || part.Form.Ends.Any(e => e.Body == body);

    private static Part? ReadPart(MappingReader reader, string id, VehicleDraft draft, List<(string Part, Placed<string> Other)> touches)
    {
        Placed<string>? kindId = ReadKind(reader.Required("kind", "what kind of part it is"));
        string name = reader.Optional("name").Text()?.Value ?? id;
        double? within = Within.Read(reader);
        IReadOnlyList<Placed<string>> other = reader.Optional("touches").List(f => f.Id())?.Value ?? [];
        touches.AddRange(other.Select(o => (id, o)));
        Field state = reader.Optional("in");
        if (state.IsPresent && state.Word([.. draft.States.ByName.Keys]) is { } typed && typed.Value != draft.States.MeasuredIn)
            FileMessages.OtherState(state, typed.Value, draft.States.MeasuredIn);
        if (kindId is null)
        {
            reader.AllowAll();
            return null;
        }

        PartKind kind = PartKinds.Find(kindId.Value)!;
        if (PartFormReader.Read(new PartSource(reader, kind, id, within, draft)) is not var (body, form)) return null;
        return new Part { Id = id, Name = name, Kind = kind, Body = body, Form = form, Touches = [.. other.Select(o => o.Value)] };
    }

    private static Placed<string>? ReadKind(Field field)
    {
        if (field.Node is not ScalarNode typed || !IsFromAxle(typed.Text)) return field.Word([.. PartKinds.All.Select(k => k.Id).Where(k => !IsFromAxle(k))]);
        FileMessages.FromAxle(field, typed.Text);
        return null;
    }

    private static bool IsFromAxle(string kind) => PartKinds.Find(kind)?.Forms.Contains(PartFormKind.FromAxle) == true;
}
