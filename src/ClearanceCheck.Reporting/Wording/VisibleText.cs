using System.Globalization;
using System.Text;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>Typed text as it may be shown: nothing in it steers the page or the terminal, and nothing in it is hidden.</summary>
/// <remarks>
/// Control characters, direction overrides, zero-width and unassigned characters are written as their number, such as
/// <c>[U+202E]</c>: a name that turns the text around it could otherwise make a value read as another one.
/// Line ends and tabs become one space.
/// </remarks>
public static class VisibleText
{
    /// <summary>Longest name or value as typed, in characters.</summary>
    public const int TypedLimit = 200;

    /// <summary>Longest sentence, in characters: sentences of rules are longer than names, and cutting an instruction may harm.</summary>
    public const int SentenceLimit = 1500;

    /// <summary>A name or a value as typed, cut at <see cref="TypedLimit"/> characters; empty for null.</summary>
    public static string Typed(string? text) => Clean(text, TypedLimit);

    /// <summary>A sentence, cut at <see cref="SentenceLimit"/> characters; empty for null.</summary>
    public static string Sentence(string? text) => Clean(text, SentenceLimit);

    private static string Clean(string? text, int limit)
    {
        if (string.IsNullOrEmpty(text)) return "";
        StringBuilder clean = new(Math.Min(text.Length, limit) + 16);
        int shown = 0;
        ReadOnlySpan<char> rest = text;
        while (!rest.IsEmpty)
        {
            if (shown == limit) return clean.Append(CultureInfo.InvariantCulture, $" ... (cut: {text.Length} characters)").ToString();
            bool isWhole = Rune.DecodeFromUtf16(rest, out Rune rune, out int length) == System.Buffers.OperationStatus.Done;
            Append(clean, isWhole ? rune.Value : rest[0], isWhole);
            rest = rest[length..];
            shown++;
        }

        return clean.ToString();
    }

    private static void Append(StringBuilder clean, int codePoint, bool isWhole)
    {
        if (codePoint is '\n' or '\t') clean.Append(' ');
        else if (codePoint == '\r') return;
        else if (isWhole && IsPlain(new Rune(codePoint))) clean.Append(new Rune(codePoint).ToString());
        else clean.Append(CultureInfo.InvariantCulture, $"[U+{codePoint:X4}]");
    }

    private static bool IsPlain(Rune rune) => Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control
        or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
