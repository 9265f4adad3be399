using ClearanceCheck.Documents;

namespace ClearanceCheck.Scans;

/// <summary>A scan's file while it is read: its bytes, what was claimed about it, and where to say what is wrong.</summary>
internal sealed record ScanFile(string Name, ReadOnlyMemory<byte> Content, ScanClaims Claims, Func<string, ReadOnlyMemory<byte>?> Beside, SourceSpan At, DiagnosticBag Diagnostics)
{
    public ReadOnlySpan<byte> Bytes => Content.Span;

    public int Length => Content.Length;

    public void Error(string id, string message, string help) => Diagnostics.Add(Diagnostic.Error(id, At, message, help));

    public void Note(string id, string message, string help) => Diagnostics.Add(Diagnostic.Note(id, At, message, help));
}
