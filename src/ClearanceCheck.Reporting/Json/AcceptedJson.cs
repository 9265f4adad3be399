using System.Text.Json;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Json;

/// <summary>That somebody takes the word for a finding, both ways.</summary>
internal static class AcceptedJson
{
    public static void Write(Utf8JsonWriter json, AcceptedCard? accepted)
    {
        if (accepted is null)
        {
            json.WriteNull("accepted");
            return;
        }

        json.WriteStartObject("accepted");
        json.WriteString("id", accepted.Id);
        json.WriteBoolean("holds", accepted.Holds);
        json.WriteString("floor", accepted.Floor);
        json.WriteString("by", accepted.By);
        json.WriteString("until", accepted.Until);
        json.WriteString("reason", accepted.Reason);
        JsonFields.Text(json, "void", accepted.Void);
        json.WriteEndObject();
    }

    public static AcceptedCard? Read(JsonNodeReader accepted) => accepted.IsNull
        ? null
        : new AcceptedCard(
            accepted["id"].Text, accepted["holds"].YesNo, accepted["floor"].Text, accepted["by"].Text, accepted["until"].Text, accepted["reason"].Text, accepted["void"].TextOrNull);
}
