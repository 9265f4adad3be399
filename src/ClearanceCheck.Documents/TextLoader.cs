using System.Buffers;
using System.Text.Unicode;

namespace ClearanceCheck.Documents;

/// <summary>Turns the content of a file into a source text, or says why it is none.</summary>
internal static class TextLoader
{
    /// <summary>Takes UTF-8 with or without a byte order mark; everything else is named and refused.</summary>
    public static SourceText? Load(string fileName, ReadOnlySpan<byte> content, DiagnosticBag diagnostics)
    {
        if (content.Length > DocumentLimits.MostText) return Refuse(DocumentMessages.TooLong(Nothing(fileName)), diagnostics);
        if (WideEncoding(content) is { } encoding) return Refuse(DocumentMessages.WrongEncoding(Nothing(fileName), encoding), diagnostics);
        var chars = new char[content.Length];
        var status = Utf8.ToUtf16(content, chars, out _, out var written, replaceInvalidSequences: false);
        var text = new string(chars, 0, written);
        if (content.Contains((byte)0)) return Refuse(DocumentMessages.Binary(Nothing(fileName)), diagnostics);
        if (status == OperationStatus.Done) return Load(fileName, text, diagnostics);
        return Refuse(DocumentMessages.NotUtf8(new SourceText(fileName, text).Span(written, written)), diagnostics);
    }

    /// <summary>Takes text that is already decoded; a byte order mark in front is dropped.</summary>
    public static SourceText? Load(string fileName, string text, DiagnosticBag diagnostics)
    {
        if (text.Length > DocumentLimits.MostText) return Refuse(DocumentMessages.TooLong(Nothing(fileName)), diagnostics);
        if (text.Contains('\0', StringComparison.Ordinal)) return Refuse(DocumentMessages.Binary(Nothing(fileName)), diagnostics);
        return new SourceText(fileName, text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text);
    }

    private static string? WideEncoding(ReadOnlySpan<byte> content) => content switch
    {
        [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] => "UTF-32",
        [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "UTF-16",
        [not 0, 0, not 0, 0, ..] or [0, not 0, 0, not 0, ..] => "UTF-16",
        _ => null,
    };

    private static SourceSpan Nothing(string fileName) => new SourceText(fileName, "").Span(0, 0);

    private static SourceText? Refuse(Diagnostic diagnostic, DiagnosticBag diagnostics)
    {
        diagnostics.Add(diagnostic);
        return null;
    }
}
