namespace ClearanceCheck.Units;

/// <summary>An unsigned decimal number found in a text.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset just after its last character.</param>
/// <param name="Value">Its exact value.</param>
/// <param name="Decimals">Digits after the point.</param>
internal readonly record struct NumberToken(int Start, int End, decimal Value, int Decimals)
{
    /// <summary>One in the last digit.</summary>
    public decimal Step
    {
        get
        {
            var step = 1m;
            for (var i = 0; i < Decimals; i++) step /= 10;
            return step;
        }
    }
}
