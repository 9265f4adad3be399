using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Checklists;

/// <summary>Reads <c>temporary</c>: what is missing or provisional.</summary>
internal static class TemporaryReader
{
    public static ImmutableArray<TemporaryState> Read(Field field, VehicleDraft draft)
    {
        var all = ImmutableArray.CreateBuilder<TemporaryState>();
        foreach ((Placed<string> id, Field value) in field.Entries() ?? [])
        {
            if (value.Mapping(r => Read(r, id.Value)) is not { } state) continue;
            draft.Remember($"temporary/{id.Value}", id.Span);
            all.Add(state);
        }

        return all.ToImmutable();
    }

    private static TemporaryState? Read(MappingReader reader, string id)
    {
        string? what = reader.Required("what", "what is missing or provisional").Text()?.Value;
        string? mustNot = reader.Required("must-not", "what must not be done until it is mended").Text()?.Value;
        string? until = reader.Required("until", "what ends it").Text()?.Value;
        string? by = reader.Required("by", "who answers for it: initials or name").Text()?.Value;
        return what is null || mustNot is null || until is null || by is null ? null : new TemporaryState(id, what, mustNot, until, by);
    }
}
