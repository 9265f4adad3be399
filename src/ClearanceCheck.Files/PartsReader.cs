using ClearanceCheck.Documents.Reading;
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
            draft.Remember($"parts/{id.Value}", id.Span);
            if (value.Mapping(r => ReadPart(r, id.Value, draft, touches)) is { } part) draft.Parts.Add(part);
        }

        foreach ((string part, Placed<string> other) in touches)
            if (!draft.Places.ContainsKey($"parts/{other.Value}") || other.Value == part) FileMessages.TouchesNothing(draft.Diagnostics, part, other, draft.Parts.Select(p => p.Id));
        if (draft.Parts.Exists(p => p.Body == "exhaust"))
            draft.Assumptions.Add(new ModelAssumption("bodies/exhaust", "The exhaust is taken as fixed to the chassis: it neither swings on its hangers nor grows with heat here."));
        if (draft.Parts.Exists(p => p.Body == "engine"))
            draft.Assumptions.Add(new ModelAssumption("bodies/engine", "The engine is taken as fixed to the chassis: it does not roll on its mounts here."));
    }

    private static Part? ReadPart(MappingReader reader, string id, VehicleDraft draft, List<(string Part, Placed<string> Other)> touches)
    {
        Placed<string>? kindId = reader.Required("kind", "what kind of part it is").Word([.. PartKinds.All.Select(k => k.Id)]);
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
        if (PartFormReader.Read(reader, kind, id, within, draft) is not var (body, form) || form is null) return null;
        return new Part { Id = id, Name = name, Kind = kind, Body = body, Form = form, Touches = [.. other.Select(o => o.Value)] };
    }
}
