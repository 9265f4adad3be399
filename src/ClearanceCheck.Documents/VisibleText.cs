using System.Globalization;
using System.Text;

namespace ClearanceCheck.Documents;

/// <summary>Makes characters visible that would hide, move or reverse the text around them.</summary>
public static class VisibleText
{
    /// <summary>The text with tabs as <c>[tab]</c> and control, format and broken characters as <c>[U+202E]</c>.</summary>
    public static string Of(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~')) return text;
        var visible = new StringBuilder(text.Length + 16);
        for (var i = 0; i < text.Length; i += RuneLength(text, i)) visible.Append(OfOne(text, i));
        return visible.ToString();
    }

    /// <summary>The visible form of the one code point at an offset.</summary>
    internal static string OfOne(string text, int at)
    {
        if (text[at] == '\t') return "[tab]";
        return Rune.TryGetRuneAt(text, at, out var rune) && !IsHidden(rune)
            ? rune.ToString()
            : "[U+" + (rune == default ? text[at] : rune.Value).ToString("X4", CultureInfo.InvariantCulture) + "]";
    }

    internal static int RuneLength(string text, int at) => Rune.TryGetRuneAt(text, at, out var rune) ? rune.Utf16SequenceLength : 1;

    private static bool IsHidden(Rune rune) => Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned;
}
