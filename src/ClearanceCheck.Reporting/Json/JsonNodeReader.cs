using System.Collections.Immutable;
using System.Text.Json;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Reporting.Json;

/// <summary>A value of a JSON text that knows its place, so that a fault can name it.</summary>
internal readonly struct JsonNodeReader(JsonElement element, string path)
{
    public JsonNodeReader this[string name] => element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out JsonElement found)
        ? new JsonNodeReader(found, path + "." + name)
        : throw new FormatException($"{path}: '{name}' is missing.");

    public bool IsNull => element.ValueKind == JsonValueKind.Null;

    public string Text => element.ValueKind == JsonValueKind.String ? element.GetString()! : throw Wrong("a text");

    public string? TextOrNull => IsNull ? null : Text;

    public double Number => element.ValueKind == JsonValueKind.Number && element.TryGetDouble(out double value) && double.IsFinite(value) ? value : throw Wrong("a finite number");

    public double? NumberOrNull => IsNull ? null : Number;

    public long Whole => element.ValueKind == JsonValueKind.Number && element.TryGetInt64(out long value) ? value : throw Wrong("a whole number");

    public bool YesNo => element.ValueKind switch { JsonValueKind.True => true, JsonValueKind.False => false, _ => throw Wrong("true or false") };

    public Vector3d Point
    {
        get
        {
            ImmutableArray<JsonNodeReader> three = Items;
            return three.Length == 3 ? new Vector3d(three[0].Number, three[1].Number, three[2].Number) : throw Wrong("three numbers");
        }
    }

    public ImmutableArray<JsonNodeReader> Items
    {
        get
        {
            if (element.ValueKind != JsonValueKind.Array) throw Wrong("a list");
            string place = path;
            return [.. element.EnumerateArray().Select((item, index) => new JsonNodeReader(item, $"{place}[{index}]"))];
        }
    }

    public ImmutableArray<string> Texts => [.. Items.Select(i => i.Text)];

    public double? OptionalNumber(string name) => element.TryGetProperty(name, out JsonElement found) ? new JsonNodeReader(found, path + "." + name).Number : null;

    public string? OptionalText(string name) => element.TryGetProperty(name, out JsonElement found) ? new JsonNodeReader(found, path + "." + name).Text : null;

    public int PropertyCount => element.ValueKind == JsonValueKind.Object ? element.EnumerateObject().Count() : throw Wrong("an object");

    public T Word<T>(Func<T, string> of)
        where T : struct, Enum
    {
        string word = Text;
        return Wording.MachineWords.Parse(word, of) ?? throw Wrong("one of " + string.Join(", ", Enum.GetValues<T>().Select(of)));
    }

    public FormatException Wrong(string wanted)
    {
        string raw = element.GetRawText();
        return new FormatException($"{path}: expected {wanted}, found {(raw.Length > 60 ? raw[..60] + "..." : raw)}.");
    }
}
