using static ClearanceCheck.Units.NumberScanner;

namespace ClearanceCheck.Units;

/// <summary>Reads one length: <c>[sign] amount [unit]</c> or <c>[sign] feet ft inches in</c>, where an amount is a decimal or a whole number with a fraction.</summary>
internal sealed class TapeGrammar
{
    /// <summary>Nothing measured on a vehicle reaches a kilometre.</summary>
    private const decimal MostMm = 1_000_000m;

    private const int InchesPerFoot = 12;
    private const decimal FinestDivision = 64;

    private readonly string text;
    private readonly LengthUnit? defaultUnit;
    private int at;
    private ParseFault? fault;

    public TapeGrammar(string text, LengthUnit? defaultUnit)
    {
        this.text = text;
        this.defaultUnit = defaultUnit;
    }

    public ParseResult<LengthReading> Parse()
    {
        var reading = ReadLength();
        return reading is { } read && fault is null ? new ParseResult<LengthReading>(read) : new ParseResult<LengthReading>(fault!);
    }

    private LengthReading? ReadLength()
    {
        at = SkipSpaces(text, 0);
        if (at == text.Length) return Fail(UnitMessages.EmptyLength(at));
        var isNegative = IsMinus(CharAt(text, at));
        if (isNegative || CharAt(text, at) == '+') at++;
        if (ReadAmount() is not { } amount) return null;
        if (ReadUnit(amount) is not { } unit) return null;
        var mm = amount.Value * unit.MillimetresIn();
        var step = amount.Step * unit.MillimetresIn();
        if (unit == LengthUnit.Foot && StartsNumber(text, SkipSpaces(text, at)))
        {
            if (ReadInchesAfter(amount) is not { } inches) return null;
            (mm, step, unit) = (mm + inches.Value * LengthUnit.Inch.MillimetresIn(), inches.Step * LengthUnit.Inch.MillimetresIn(), LengthUnit.Inch);
        }

        if (!ReadEnd(unit)) return null;
        if (mm > MostMm) return Fail(UnitMessages.FarTooLong(text));
        return new LengthReading(Length.FromMillimetres((double)(isNegative ? -mm : mm)), (double)(step / 2), unit);
    }

    private TapeAmount? ReadAmount()
    {
        if (Scan(text, at, out fault) is not { } number) return null;
        at = number.End;
        if (CharAt(text, at) == '/') return ReadFraction(null, number);
        var next = IsMinus(CharAt(text, at)) ? at + 1 : SkipSpaces(text, at);
        if (next == at || !char.IsAsciiDigit(CharAt(text, next))) return new TapeAmount(number.Start, at, number.Value, number.Step, false);
        if (Scan(text, next, out fault) is not { } top) return null;
        if (CharAt(text, top.End) != '/') return FailAmount(UnitMessages.TwoNumbers(text, number.Start, top.End));
        if (number.Decimals > 0) return FailAmount(UnitMessages.DecimalWithFraction(text, number.Start, FractionEnd(top.End)));
        return ReadFraction(number, top);
    }

    /// <summary>Reads from the stroke on: <paramref name="top"/> is above it, <paramref name="whole"/> stands before it.</summary>
    private TapeAmount? ReadFraction(NumberToken? whole, NumberToken top)
    {
        var end = FractionEnd(top.End);
        var stroke = text.IndexOf('/', top.End + 1, end - top.End - 1);
        if (stroke >= 0) return FailAmount(UnitMessages.TwoStrokes(text, top.Start, end));
        if (!char.IsAsciiDigit(CharAt(text, top.End + 1))) return FailAmount(UnitMessages.NoDenominator(text, top.Start, end));
        if (Scan(text, top.End + 1, out fault) is not { } bottom) return null;
        if (top.Decimals > 0 || bottom.Decimals > 0) return FailAmount(UnitMessages.DecimalWithFraction(text, top.Start, bottom.End));
        if (bottom.Value == 0) return FailAmount(UnitMessages.ZeroDenominator(text, top.Start, end));
        if (!IsTapeDivision(bottom.Value)) return FailAmount(UnitMessages.NotATapeDivision(text, top.Start, end));
        if (top.Value >= bottom.Value) return FailAmount(UnitMessages.ImproperFraction(text, top.Start, end, whole?.Value ?? 0, top.Value, bottom.Value));
        at = bottom.End;
        return new TapeAmount(whole?.Start ?? top.Start, at, (whole?.Value ?? 0) + (top.Value / bottom.Value), 1 / bottom.Value, true);
    }

    private LengthUnit? ReadUnit(TapeAmount amount)
    {
        var start = SkipSpaces(text, at);
        if (start == text.Length) return BareUnit(amount);
        if (StartsNumber(text, start)) return FailUnit(UnitMessages.TwoNumbers(text, amount.Start, SkipWord(text, start)));
        var unit = ReadMark(start) ?? (fault is null ? ReadUnitWord(start) : null);
        if (unit is null) return null;
        if (amount.HasFraction && unit is not (LengthUnit.Inch or LengthUnit.Foot)) return FailUnit(UnitMessages.FractionOfMetric(text, amount.Start, amount.End, unit.Value));
        return unit;
    }

    private LengthUnit? BareUnit(TapeAmount amount)
    {
        if (amount.HasFraction) return defaultUnit is LengthUnit.Inch or LengthUnit.Foot ? defaultUnit : FailUnit(UnitMessages.BareFraction(text, amount.Start, amount.End));
        if (defaultUnit is null) return FailUnit(UnitMessages.BareNumber(text, amount));
        var startsWithZero = amount.End - amount.Start > 1 && text[amount.Start] == '0' && char.IsAsciiDigit(text[amount.Start + 1]);
        return startsWithZero ? FailUnit(UnitMessages.LeadingZero(text, amount.Start, amount.End)) : defaultUnit;
    }

    /// <summary>Reads an inch or foot mark; typographic ones count as the typed ones.</summary>
    private LengthUnit? ReadMark(int start)
    {
        if (!IsMark(CharAt(text, start))) return null;
        if (IsMark(CharAt(text, start + 1))) return FailUnit(UnitMessages.FusedMarks(text, start));
        at = start + 1;
        return IsInchMark(text[start]) ? LengthUnit.Inch : LengthUnit.Foot;
    }

    private LengthUnit? ReadUnitWord(int start)
    {
        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end]) && !char.IsAsciiDigit(text[end]) && !IsMark(text[end])) end++;
        var word = text[start..end];
        if (word.Length == 0) return FailUnit(UnitMessages.Trailing(text[start..], start));
        if (LengthUnits.FromSymbol(word) is not { } unit) return FailUnit(UnknownUnit(word, start));
        at = end;
        return unit;
    }

    private static ParseFault UnknownUnit(string word, int start) => word[0] switch
    {
        '±' => UnitMessages.PlusMinus(start),
        ',' or ';' or '/' or '-' or '.' or '+' => UnitMessages.Trailing(word, start),
        _ => word is "km" or "mi" or "mile" or "miles" or "yd" ? UnitMessages.UnitTooLarge(word, start) : UnitMessages.UnknownLengthUnit(word, start),
    };

    private TapeAmount? ReadInchesAfter(TapeAmount feet)
    {
        if (!feet.IsWhole) return FailAmount(UnitMessages.FeetNotWhole(text, feet.Start, feet.End));
        at = SkipSpaces(text, at);
        if (ReadAmount() is not { } inches) return null;
        if (SkipSpaces(text, at) == text.Length) return FailAmount(UnitMessages.InchesWithoutUnit(text, inches.Start, inches.End));
        if (ReadUnit(inches) is not { } unit) return null;
        if (unit != LengthUnit.Inch) return FailAmount(UnitMessages.NotInchesAfterFeet(text, inches.Start, at));
        return inches.Value < InchesPerFoot ? inches : FailAmount(UnitMessages.TooManyInches(text, inches.Start, inches.End));
    }

    private bool ReadEnd(LengthUnit unit)
    {
        at = SkipSpaces(text, at);
        if (at == text.Length) return true;
        var rest = text[at..];
        if (rest[0] == '±') fault = UnitMessages.PlusMinus(at);
        else if (IsMark(rest[0])) fault = UnitMessages.UnitTwice(text, at);
        else if (unit == LengthUnit.Inch && rest.IndexOf('/', StringComparison.Ordinal) > 0 && char.IsAsciiDigit(rest[0])) fault = UnitMessages.FractionAfterUnit(text, at);
        else if (unit == LengthUnit.Inch && char.IsAsciiDigit(rest[0]) && IsFootMark(rest[^1])) fault = UnitMessages.InchesBeforeFeet(text, at);
        else fault = UnitMessages.Trailing(rest, at);
        return false;
    }

    /// <summary>The end of everything that was typed as a fraction, so that the caret covers all of it.</summary>
    private int FractionEnd(int from)
    {
        var end = from;
        while (char.IsAsciiDigit(CharAt(text, end)) || CharAt(text, end) is '/' or '.') end++;
        return end;
    }

    private static bool IsTapeDivision(decimal bottom) => bottom is >= 2 and <= FinestDivision && ((int)bottom & ((int)bottom - 1)) == 0;

    private static bool IsInchMark(char c) => c is '"' or '″' or '”' or '“';

    private static bool IsFootMark(char c) => c is '\'' or '′' or '’' or '‘';

    private static bool IsMark(char c) => IsInchMark(c) || IsFootMark(c);

    private LengthReading? Fail(ParseFault found)
    {
        fault = found;
        return null;
    }

    private TapeAmount? FailAmount(ParseFault found)
    {
        fault = found;
        return null;
    }

    private LengthUnit? FailUnit(ParseFault found)
    {
        fault = found;
        return null;
    }
}
