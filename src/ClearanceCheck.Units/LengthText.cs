namespace ClearanceCheck.Units;

/// <summary>Lengths as people write them from a tape: <c>654</c>, <c>65.4 cm</c>, <c>31-5/8 in</c>, <c>31 5/8"</c>, <c>2' 7-5/8"</c>, <c>2 ft 7 in</c>.</summary>
/// <remarks>A minus in front belongs to the whole reading: <c>-84-3/8 in</c> is -(84 3/8). Decimal and fraction arithmetic is exact; the result is the nearest double.</remarks>
public static class LengthText
{
    /// <summary>Reads one length; a bare number has the default unit, and is a fault where there is none.</summary>
    public static ParseResult<LengthReading> Parse(string text, LengthUnit? defaultUnit) => new TapeGrammar(text, defaultUnit).Parse();
}
