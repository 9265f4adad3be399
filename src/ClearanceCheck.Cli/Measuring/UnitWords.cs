using System.Diagnostics;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>Units as they are written.</summary>
internal static class UnitWords
{
    public static string Of(QuantityUnit unit) => unit switch
    {
        QuantityUnit.Millimetre => "mm",
        QuantityUnit.Percent => "%",
        _ => throw new UnreachableException(),
    };
}
