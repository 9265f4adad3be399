using System.Globalization;

namespace ClearanceCheck.Units;

/// <summary>Finds the unsigned decimal number at a place of a text, or says what is wrong with it.</summary>
internal static class NumberScanner
{
    /// <summary>No measured value has more digits; fewer than the 28 that decimal arithmetic keeps exact.</summary>
    private const int MostDigits = 15;

    private static readonly string[] NotFinite = [".nan", "nan", ".infinity", ".inf", "infinity", "inf", "∞"];

    public static NumberToken? Scan(string text, int start, out ParseFault? fault)
    {
        fault = NotFiniteAt(text, start);
        if (fault is not null) return null;
        var end = SkipDigits(text, start);
        var whole = end - start;
        var decimals = 0;
        if (CharAt(text, end) == '.' && char.IsAsciiDigit(CharAt(text, end + 1)))
        {
            var after = SkipDigits(text, end + 1);
            decimals = after - end - 1;
            end = after;
        }

        fault = FaultOf(text, start, end, whole + decimals);
        if (fault is not null) return null;
        var value = decimal.Parse(text.AsSpan(start, end - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return new NumberToken(start, end, value, decimals);
    }

    /// <summary>The character at an offset, or NUL past the end.</summary>
    public static char CharAt(string text, int at) => at < text.Length ? text[at] : '\0';

    public static bool IsMinus(char c) => c is '-' or '\u2212';

    /// <summary>Whether a number begins here: a digit, or a point before a digit.</summary>
    public static bool StartsNumber(string text, int at) =>
        char.IsAsciiDigit(CharAt(text, at)) || (CharAt(text, at) == '.' && char.IsAsciiDigit(CharAt(text, at + 1)));

    public static int SkipDigits(string text, int at)
    {
        while (char.IsAsciiDigit(CharAt(text, at))) at++;
        return at;
    }

    public static int SkipSpaces(string text, int at)
    {
        while (CharAt(text, at) is ' ' or '\t' or '\u00A0' or '\u202F') at++;
        return at;
    }

    /// <summary>The end of the run of characters that are no spaces.</summary>
    public static int SkipWord(string text, int at)
    {
        while (at < text.Length && !char.IsWhiteSpace(text[at])) at++;
        return at;
    }

    private static ParseFault? FaultOf(string text, int start, int end, int digits)
    {
        if (digits == 0) return UnitMessages.NotANumber(text, start);
        if (CharAt(text, end) == ',' && char.IsAsciiDigit(CharAt(text, end + 1))) return UnitMessages.DecimalComma(text, start, end);
        var exponentEnd = ExponentEnd(text, end);
        if (exponentEnd > end) return ExponentFault(text, start, exponentEnd);
        return digits > MostDigits ? UnitMessages.TooManyDigits(start, end, MostDigits) : null;
    }

    private static ParseFault ExponentFault(string text, int start, int end)
    {
        var finite = double.IsFinite(double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture));
        return finite ? UnitMessages.Exponent(text, start, end) : UnitMessages.NotFinite(text, start, end);
    }

    private static int ExponentEnd(string text, int at)
    {
        if (CharAt(text, at) is not ('e' or 'E')) return at;
        var digits = CharAt(text, at + 1) is '+' or '-' ? at + 2 : at + 1;
        var end = SkipDigits(text, digits);
        return end > digits ? end : at;
    }

    private static ParseFault? NotFiniteAt(string text, int start)
    {
        foreach (var word in NotFinite)
        {
            if (string.Compare(text, start, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) != 0) continue;
            if (!char.IsLetterOrDigit(CharAt(text, start + word.Length))) return UnitMessages.NotFinite(text, start, start + word.Length);
        }

        return null;
    }
}
