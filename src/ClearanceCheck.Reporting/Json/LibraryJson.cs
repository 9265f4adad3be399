using System.Text.Json;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Json;

/// <summary>The rules that judged, both ways.</summary>
internal static class LibraryJson
{
    public static void Write(Utf8JsonWriter json, LibraryCard library)
    {
        json.WriteStartObject("library");
        JsonFields.Text(json, "name", library.Name);
        JsonFields.Text(json, "version", library.Version);
        JsonFields.Text(json, "hash", library.Hash);
        json.WriteNumber("ruleCount", library.RuleCount);
        JsonFields.Texts(json, "notLoaded", library.NotLoaded);
        JsonFields.Each(json, "layers", library.Layers, WriteLayer);
        JsonFields.Each(json, "changes", library.Changes, WriteChange);
        json.WriteEndObject();
    }

    public static LibraryCard Read(JsonNodeReader library) => new(
        library["name"].Text, library["version"].Text, library["hash"].Text, (int)library["ruleCount"].Whole, library["notLoaded"].Texts)
    {
        Layers = [.. library["layers"].Items.Select(l => new LayerCard(l["name"].Text, l["version"].Text, l["overlay"].YesNo, l["hash"].Text))],
        Changes = [.. library["changes"].Items.Select(ReadChange)],
    };

    private static void WriteLayer(Utf8JsonWriter json, LayerCard layer)
    {
        json.WriteString("name", layer.Name);
        json.WriteString("version", layer.Version);
        json.WriteBoolean("overlay", layer.IsOverlay);
        json.WriteString("hash", layer.Hash);
    }

    private static void WriteChange(Utf8JsonWriter json, RuleChangeCard change)
    {
        json.WriteString("rule", change.Rule);
        json.WriteString("title", change.Title);
        json.WriteString("kind", change.Kind);
        JsonFields.Texts(json, "what", change.What);
        JsonFields.Text(json, "because", change.Because);
        JsonFields.Text(json, "by", change.By);
        JsonFields.Text(json, "until", change.Until);
        json.WriteString("layer", change.Layer);
        json.WriteString("place", change.Place);
    }

    private static RuleChangeCard ReadChange(JsonNodeReader change) => new(
        change["rule"].Text, change["title"].Text, change["kind"].Text, change["what"].Texts,
        change["because"].TextOrNull, change["by"].TextOrNull, change["until"].TextOrNull, change["layer"].Text, change["place"].Text);
}
