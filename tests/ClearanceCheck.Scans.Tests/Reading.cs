using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans.Tests;

/// <summary>A scan that was read, and what was said about it.</summary>
internal sealed record Reading(Scan? Scan, DiagnosticBag Diagnostics)
{
    private const string Line = "    scan: { file: a-file, unit: a-unit }\n";

    /// <summary>Millimetres, x forward, z up, and the length of <see cref="TestMesh.Box"/>.</summary>
    public static ScanClaims BoxClaims { get; } = new(LengthUnit.Millimetre, ScanAxis.PlusZ, ScanAxis.PlusX, [new ScanSize(ScanSide.X, 40, 1)]);

    public string Messages => DiagnosticRenderer.Render(Diagnostics).ReplaceLineEndings("\n").Trim();

    public static Reading Of(string name, byte[] content, ScanClaims? claims = null, Func<string, ReadOnlyMemory<byte>?>? beside = null)
    {
        var source = new SourceText("inspection.yaml", Line);
        var diagnostics = new DiagnosticBag();
        Scan? scan = ScanReader.Read(name, content, claims ?? BoxClaims, beside ?? (_ => null), source.Span(18, 24), diagnostics);
        return new Reading(scan, diagnostics);
    }

    public static Reading Of(string name, string text, ScanClaims? claims = null, Func<string, ReadOnlyMemory<byte>?>? beside = null) =>
        Of(name, Encoding.UTF8.GetBytes(text), claims, beside);

    /// <summary>The scan; a test that gets none shows why.</summary>
    public Scan Sound()
    {
        Scan.ShouldNotBeNull(Messages);
        Diagnostics.HasErrors.ShouldBeFalse(Messages);
        return Scan;
    }
}
