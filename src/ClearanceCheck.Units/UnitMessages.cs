using System.Globalization;

namespace ClearanceCheck.Units;

/// <summary>What is said about a typed value that cannot be read, one method a fault.</summary>
internal static class UnitMessages
{
    public const string ExponentId = "number.exponent";

    private const string LengthExamples = "Write for example `654 mm`, `65.4 cm`, `31-5/8 in` or `2 ft 7 in`.";

    public static ParseFault EmptyLength(int at) =>
        new("length.empty", at, 0, "A length is needed here, and there is nothing.", LengthExamples);

    public static ParseFault Empty(int at, string what) =>
        new("number.empty", at, 0, $"Here {what} is needed, and there is nothing.", "Write the value with its unit.");

    public static ParseFault NotANumber(string text, int start)
    {
        var end = Math.Max(NumberScanner.SkipWord(text, start), start);
        var word = text[start..end];
        return end == start
            ? new("number.missing", start, 0, "A number is needed here.", "Write digits, with a point before the decimals.")
            : new("number.not-a-number", start, end - start, $"`{Cut(word)}` is not a number.", "Write digits, with a point before the decimals.");
    }

    public static ParseFault NotFinite(string text, int start, int end) =>
        new("number.not-finite", start, end - start, $"`{Cut(text[start..end])}` is not a finite number.", "Write the value as measured; if it was not measured, leave the key out.");

    public static ParseFault Exponent(string text, int start, int end) =>
        new(ExponentId, start, end - start, $"`{Cut(text[start..end])}` is written with an exponent, and no tape shows one.", "Write all digits out.");

    public static ParseFault TooManyDigits(int start, int end, int most) =>
        new("number.too-many-digits", start, end - start, $"This number has more than {Invariant(most)} digits.", "Write it as finely as it was read, no finer.");

    public static ParseFault DecimalComma(string text, int start, int comma)
    {
        var end = NumberScanner.SkipDigits(text, comma + 1);
        var (whole, after) = (text[start..comma], text[(comma + 1)..end]);
        var grouped = after.Length % 3 == 0 ? after : after.PadRight(after.Length + 3 - (after.Length % 3), '0');
        return new("number.decimal-comma", start, end - start, $"Comma in `{Cut(text[start..end])}`: {Cut(whole + "." + after)} or {Cut(whole + " " + grouped)}?", "Write a point before the decimals, and no mark between thousands.");
    }

    public static ParseFault LeadingZero(string text, int start, int end)
    {
        var trimmed = text[start..end].TrimStart('0');
        var right = trimmed.Length == 0 || trimmed[0] == '.' ? "0" + trimmed : trimmed;
        return new("number.leading-zero", start, end - start, $"`{Cut(text[start..end])}` starts with a zero; some editors read that as another number.", $"Write `{Cut(right)}`.");
    }

    public static ParseFault BareNumber(string text, TapeAmount amount)
    {
        var typed = text[amount.Start..amount.End];
        return new("length.no-unit", amount.Start, amount.End - amount.Start, $"`{Cut(typed)}` has no unit, and none is declared: {Cut(typed)} mm ({AsInches(amount.Value)}) or {Cut(typed)} in ({AsMillimetres(amount.Value)})?", $"Write `{Cut(typed)} mm` or `{Cut(typed)} in`, or declare `unit: mm` at the top of the file.");
    }

    public static ParseFault BareFraction(string text, int start, int end) =>
        new("length.fraction-no-unit", start, end - start, $"`{Cut(text[start..end])}` is a fraction without a unit.", $"Write `{Cut(text[start..end])} in` if it was read in inches.");

    public static ParseFault FractionOfMetric(string text, int start, int end, LengthUnit unit) =>
        new("length.metric-fraction", start, end - start, $"`{Cut(text[start..end])}` is a fraction, and {unit.Symbol()} is not read in fractions.", $"Write `{Cut(text[start..end])} in`, or a decimal with {unit.Symbol()}.");

    public static ParseFault TwoNumbers(string text, int start, int end) =>
        new("length.two-numbers", start, end - start, $"`{Cut(text[start..end])}` is two numbers, and no unit stands between them.", "Write one number without gaps, or a fraction such as `31-5/8 in`.");

    public static ParseFault DecimalWithFraction(string text, int start, int end) =>
        new("length.decimal-and-fraction", start, end - start, $"`{Cut(text[start..end])}` mixes a decimal point with a fraction.", "Write either `31.625 in` or `31-5/8 in`.");

    public static ParseFault TwoStrokes(string text, int start, int end) =>
        new("length.two-strokes", start, end - start, $"`{Cut(text[start..end])}` has more than one stroke; a fraction has one.", "Write for example `3/4 in` or `31-3/4 in`.");

    public static ParseFault NoDenominator(string text, int start, int end) =>
        new("length.no-denominator", start, end - start, $"`{Cut(text[start..end])}` has no number under the stroke.", "Write for example `5/8 in`.");

    public static ParseFault ZeroDenominator(string text, int start, int end) =>
        new("length.zero-denominator", start, end - start, $"`{Cut(text[start..end])}` divides by zero.", "Write for example `1/2 in`; a tape is divided into halves, quarters, eighths and so on.");

    public static ParseFault NotATapeDivision(string text, int start, int end) =>
        new("length.not-a-tape-division", start, end - start, $"`{Cut(text[start..end])}`: no inch tape is divided like that; under the stroke goes 2, 4, 8, 16, 32 or 64.", "Write the fraction as it stands on the tape, or a decimal such as `0.33 in`.");

    public static ParseFault ImproperFraction(string text, int start, int end, decimal whole, decimal top, decimal bottom)
    {
        var right = LengthFormat.Mixed((long)((whole * bottom) + top), (long)bottom);
        return new("length.improper-fraction", start, end - start, $"`{Cut(text[start..end])}` is a whole inch or more; a fraction on a tape is less than one.", $"Look at the tape again; `{right} in` is what it would add up to.");
    }

    public static ParseFault PlusMinus(int at) =>
        new("length.plus-minus", at, 1, "A length stands without its plus-minus here.", "Write the half-width under `within:`.");

    public static ParseFault UnknownLengthUnit(string word, int at)
    {
        var help = LengthUnits.Nearest(word) is { } nearest ? $"Did you mean `{nearest}`? Units are mm, cm, m, in, ft." : "Units are mm, cm, m, in, ft.";
        return new("length.unknown-unit", at, word.Length, $"`{Cut(word)}` is not a unit of length.", help);
    }

    public static ParseFault UnitTooLarge(string word, int at) =>
        new("length.unit-too-large", at, word.Length, $"`{word}` is out of range for a vehicle.", "Units are mm, cm, m, in, ft.");

    public static ParseFault FarTooLong(string text) =>
        new("length.out-of-range", 0, text.Length, $"`{Cut(text.Trim())}` is out of range: nothing on a vehicle is longer than a kilometre.", "Look at the digits and the unit.");

    public static ParseFault FusedMarks(string text, int at) =>
        new("length.fused-marks", at, 2, $"`{text.Substring(at, 2)}` is two marks in one place.", "One `'` is feet, one `\"` is inches; `in` and `ft` are safer.");

    public static ParseFault UnitTwice(string text, int at) =>
        new("length.unit-twice", at, 1, $"The unit is there already; `{text[at]}` is one too many.", LengthExamples);

    public static ParseFault FractionAfterUnit(string text, int at) =>
        new("length.fraction-after-unit", at, text.Length - at, $"The fraction `{Cut(text[at..].TrimEnd())}` stands after the unit.", "Write the fraction before the unit: `31-5/8 in`.");

    public static ParseFault InchesBeforeFeet(string text, int at) =>
        new("length.inches-before-feet", at, text.Length - at, "Inches stand before feet.", "Write feet first: `2' 7\"` or `2 ft 7 in`.");

    public static ParseFault FeetNotWhole(string text, int start, int end) =>
        new("length.feet-not-whole", start, end - start, $"`{Cut(text[start..end])}` feet is not whole, and inches follow.", "Write whole feet and then inches, or feet alone.");

    public static ParseFault InchesWithoutUnit(string text, int start, int end) =>
        new("length.inches-without-unit", start, end - start, $"`{Cut(text[start..end])}` after the feet has no unit.", $"Write `{Cut(text[start..end])} in`.");

    public static ParseFault NotInchesAfterFeet(string text, int start, int end) =>
        new("length.not-inches-after-feet", start, end - start, $"`{Cut(text[start..end])}` stands after feet, where only inches go.", "Write for example `2 ft 7 in`.");

    public static ParseFault TooManyInches(string text, int start, int end) =>
        new("length.too-many-inches", start, end - start, $"`{Cut(text[start..end])}` inches after the feet is a foot or more.", "After feet write less than 12 in.");

    public static ParseFault Trailing(string rest, int at) =>
        new("length.trailing", at, rest.Length, $"`{Cut(rest.TrimEnd())}` does not belong to a length.", LengthExamples);

    public static ParseFault NoUnitHere(string text, int at) =>
        new("number.trailing", at, text.Length - at, $"`{Cut(text[at..].TrimEnd())}` stands after the number; a plain number has no unit here.", "Write the number alone.");

    public static ParseFault UnitMissing(string text, int end, string what, string[] units) =>
        new("number.no-unit", 0, end, $"`{Cut(text[..end].Trim())}` has no unit; {what} always has one.", $"Write `{Cut(text[..end].Trim())} {units[0]}`.");

    public static ParseFault WrongUnit(string unit, int at, string what, string[] units) =>
        new("number.wrong-unit", at, unit.Length, $"`{Cut(unit)}` is not a unit of {what}.", "Write " + string.Join(" or ", units.Select(word => "`" + word + "`")) + " after the number.");

    public static ParseFault BelowAbsoluteZero(string text) =>
        new("temperature.below-absolute-zero", 0, text.Length, $"`{Cut(text.Trim())}` is below absolute zero (-273.15 °C, -459.67 °F).", "Look at the sign and the unit.");

    private static string AsInches(decimal mm) => LengthFormat.Inches(Length.FromMillimetres((double)mm));

    private static string AsMillimetres(decimal inches) => LengthFormat.Millimetres(Length.FromInches((double)inches));

    private static string Invariant(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A message stays one line: what was typed is cut at 40 characters.</summary>
    private static string Cut(string typed) => typed.Length <= 40 ? typed : typed[..37] + "...";
}
