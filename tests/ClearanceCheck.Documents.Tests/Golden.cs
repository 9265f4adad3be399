using ClearanceCheck.Documents.Csv;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Documents.Yaml;
using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Tests;

/// <summary>Compares everything that is said about a file with what should be said, word by word, under two cultures.</summary>
internal static class Golden
{
    public static readonly CsvColumns Columns = new(["part", "x", "y", "z"], ["in", "within"]);

    /// <summary>What is said about a YAML file by itself, and then by the sample format if it could be read.</summary>
    public static string OfYaml(string text)
    {
        var diagnostics = new DiagnosticBag();
        if (YamlText.Read("t.yaml", text, diagnostics) is { } root) MappingReader.ReadFile(root, diagnostics, SampleReader.Read);
        return WithIds(diagnostics);
    }

    public static string OfCsv(string text)
    {
        var diagnostics = new DiagnosticBag();
        var table = CsvText.Read("t.csv", text, Columns, diagnostics, LengthUnit.Millimetre);
        foreach (var row in table?.Rows ?? [])
        {
            row.Required("part", "the part's id").Id();
            row.Required("x", "forward of the datum").Length(LengthRange.PlaceOnVehicle);
            row.Required("y", "left of the datum").Length(LengthRange.PlaceOnVehicle);
            row.Required("z", "above the datum").Length(LengthRange.PlaceOnVehicle);
            row.Optional("within").Length(LengthRange.Allowance);
        }

        return WithIds(diagnostics);
    }

    /// <summary>The rendered text, and below it the stable ids, which are not part of it.</summary>
    public static string WithIds(DiagnosticBag diagnostics) =>
        diagnostics.Count == 0 ? "" : DiagnosticRenderer.Render(diagnostics) + string.Join(' ', diagnostics.Ordered.Select(item => item.Id));

    public static void Yaml(string text, string expected) => Check(() => OfYaml(text), expected);

    public static void Csv(string text, string expected) => Check(() => OfCsv(text), expected);

    public static void Bytes(byte[] content, string expected) => Check(
        () =>
        {
            var diagnostics = new DiagnosticBag();
            YamlText.Read("t.yaml", content, diagnostics);
            return WithIds(diagnostics);
        },
        expected);

    public static void Check(Func<string> say, string expected)
    {
        Cultures.Under("", say).TrimEnd('\n').ShouldBe(expected);
        Cultures.Under("de-DE", say).TrimEnd('\n').ShouldBe(expected);
    }
}
