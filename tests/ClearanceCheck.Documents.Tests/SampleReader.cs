using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Documents.Tests;

/// <summary>Reads a small invented format with a key for every kind of value.</summary>
internal static class SampleReader
{
    private static readonly string[] Kinds = ["brake-hose", "brake-line", "exhaust-pipe"];

    private static readonly Dictionary<string, int> Sides = new(StringComparer.Ordinal) { ["left"] = 1, ["right"] = -1 };

    public static string? Read(MappingReader reader)
    {
        var said = new List<string>();
        Say(said, "format", reader.Required("format", "the number of this file's format").PositiveInteger()?.Value);
        if (reader.ReadDefaultUnit() is { } unit) said.Add($"unit={unit}");
        Say(said, "name", reader.Optional("name").Text()?.Value);
        Say(said, "id", reader.Optional("id").Id()?.Value);
        Say(said, "kind", reader.Optional("kind").Word(Kinds)?.Value);
        Say(said, "side", reader.Optional("side").Choice(Sides)?.Value);
        Say(said, "height", reader.Optional("height").Length(LengthRange.SizeOnVehicle)?.Value.Length);
        Say(said, "pitch", reader.Optional("pitch").Angle()?.Value);
        Say(said, "slack", reader.Optional("slack").Percentage()?.Value);
        Say(said, "rate", reader.Optional("rate").Stiffness()?.Value);
        Say(said, "twist", reader.Optional("twist").TurningStiffness()?.Value);
        Say(said, "surface", reader.Optional("surface").Temperature()?.Value);
        Say(said, "factor", reader.Optional("factor").Number()?.Value);
        Say(said, "date", reader.Optional("date").Date()?.Value.ToString("O", System.Globalization.CultureInfo.InvariantCulture));
        Say(said, "points", reader.Optional("points").RelativePath()?.Value);
        Say(said, "at", reader.Optional("at").Triple()?.Value.X.Length);
        Say(said, "path", reader.Optional("path").Triples()?.Value.Count);
        Say(said, "step", reader.Optional("step").Lengths(2)?.Value[1].Length);
        Say(said, "clips", reader.Optional("clips").PositiveIntegers() is { } clips ? string.Join('+', clips.Value) : null);
        Say(said, "scope", reader.Optional("scope").Words(["front", "rear"])?.Value.Count);
        Say(said, "upper", reader.Optional("upper").Mapping(ReadEnd));
        foreach (var (key, value) in reader.Optional("parts").Entries() ?? []) Say(said, key.Value, value.Mapping(ReadEnd));
        return string.Join("; ", said);
    }

    private static string? ReadEnd(MappingReader reader)
    {
        var body = reader.Required("body", "the body that it is fixed to").Text();
        var at = reader.Required("at", "the place, as x, y, z").Triple();
        return body is null || at is null ? null : $"{body.Value}@{at.Value.Z.Length}";
    }

    private static void Say<T>(List<string> said, string key, T? value)
    {
        if (value is not null) said.Add(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{key}={value}"));
    }
}
