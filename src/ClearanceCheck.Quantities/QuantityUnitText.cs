using System.Diagnostics;

namespace ClearanceCheck.Quantities;

/// <summary>Units as they are written beside numbers.</summary>
public static class QuantityUnitText
{
    public static string Of(QuantityUnit unit) => unit switch
    {
        QuantityUnit.Millimetre => "mm",
        QuantityUnit.Percent => "%",
        QuantityUnit.Degree => "deg",
        _ => throw new UnreachableException(),
    };
}
