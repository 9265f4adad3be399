using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>scope</c>: the axles inspected, or the whole vehicle.</summary>
internal static class ScopeReader
{
    private const string Whole = "whole-vehicle";

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Required("scope", "the axles inspected: [ rear ], or [ whole-vehicle ]");
        IReadOnlyList<Field> items = field.Items() ?? [];
        if (items.Any(i => i.Node is ScalarNode { Text: Whole }))
        {
            if (items.Count > 1) FileMessages.WholeAndAxles(field);
            draft.IsWhole = true;
            draft.Scope = [.. draft.Axles.Select(a => a.Name)];
            return;
        }

        foreach (Field item in items)
        {
            if (draft.Axles.Count == 0) item.Id();
            else if (item.Word([.. draft.Axles.Select(a => a.Name).Append(Whole)]) is { } axle) draft.Scope = draft.Scope.Add(axle.Value);
        }
    }
}
