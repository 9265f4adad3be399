using System.Text;
using ClearanceCheck.Documents;

namespace ClearanceCheck.Files.Tests;

/// <summary>The fixture one-line with some of its text exchanged.</summary>
internal static class FaultyFile
{
    public static InspectionReading Read(params (string Old, string New)[] changes) => Read(null, changes);

    public static InspectionReading Read(string? table, params (string Old, string New)[] changes)
    {
        string text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span);
        foreach ((string old, string fresh) in changes)
        {
            text.ShouldContain(old);
            text = text.Replace(old, fresh, StringComparison.Ordinal);
        }

        return InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => Beside(table, file)));
    }

    public static string Messages(this InspectionReading reading) => DiagnosticRenderer.Render(reading.Diagnostics).ReplaceLineEndings("\n").Trim();

    private static ReadOnlyMemory<byte>? Beside(string? table, string file) =>
        table is not null && file == "exhaust.csv" ? new ReadOnlyMemory<byte>(Encoding.UTF8.GetBytes(table)) : FixtureFiles.Beside("one-line", file);
}
