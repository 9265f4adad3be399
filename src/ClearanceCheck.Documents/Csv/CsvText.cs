using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Csv;

/// <summary>Reads a table from comma- or semicolon-separated text; the first row names the columns, blank lines are passed over.</summary>
public static class CsvText
{
    /// <summary>Reads the content of a file; null when its header cannot be used. Every fault is in the bag.</summary>
    public static CsvTable? Read(string fileName, ReadOnlySpan<byte> content, CsvColumns columns, DiagnosticBag diagnostics, LengthUnit? defaultUnit = null) =>
        Read(TextLoader.Load(fileName, content, diagnostics), columns, diagnostics, defaultUnit);

    /// <summary>Reads text that is already decoded.</summary>
    public static CsvTable? Read(string fileName, string text, CsvColumns columns, DiagnosticBag diagnostics, LengthUnit? defaultUnit = null) =>
        Read(TextLoader.Load(fileName, text, diagnostics), columns, diagnostics, defaultUnit);

    private static CsvTable? Read(SourceText? source, CsvColumns columns, DiagnosticBag diagnostics, LengthUnit? defaultUnit) =>
        source is null ? null : new CsvReader(source, columns, new ReadingContext(diagnostics, defaultUnit)).Read();
}
