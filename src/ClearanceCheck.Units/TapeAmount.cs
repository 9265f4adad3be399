namespace ClearanceCheck.Units;

/// <summary>A number before its unit: whole, decimal or with a fraction.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset just after its last character.</param>
/// <param name="Value">Its exact value.</param>
/// <param name="Step">One in the last digit, or one fraction step.</param>
/// <param name="HasFraction">Whether it was written with a fraction.</param>
internal readonly record struct TapeAmount(int Start, int End, decimal Value, decimal Step, bool HasFraction)
{
    public bool IsWhole => !HasFraction && Step == 1;
}
