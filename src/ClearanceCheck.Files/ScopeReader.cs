using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>scope</c>: the axles inspected.</summary>
internal static class ScopeReader
{
    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Required("scope", "the axles inspected: [ rear ]");
        foreach (Field item in field.Items() ?? [])
        {
            if (item.Node is Documents.Nodes.ScalarNode { Text: "whole-vehicle" }) FileMessages.WholeVehicle(item);
            else if (draft.Axles.Count == 0) item.Id();
            else if (item.Word([.. draft.Axles.Select(a => a.Name)]) is { } axle) draft.Scope = draft.Scope.Add(axle.Value);
        }
    }
}
