using System.Diagnostics;

namespace ClearanceCheck.Units;

/// <summary>The words for the units of length and their sizes.</summary>
public static class LengthUnits
{
    /// <summary>The words that are read as units, in the order they are offered.</summary>
    public static IReadOnlyList<string> Symbols { get; } = ["mm", "cm", "m", "in", "ft"];

    /// <summary>The unit that a word stands for, or null.</summary>
    public static LengthUnit? FromSymbol(string symbol) => symbol switch
    {
        "mm" => LengthUnit.Millimetre,
        "cm" => LengthUnit.Centimetre,
        "m" => LengthUnit.Metre,
        "in" => LengthUnit.Inch,
        "ft" => LengthUnit.Foot,
        _ => null,
    };

    /// <summary>The word for a unit.</summary>
    public static string Symbol(this LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => "mm",
        LengthUnit.Centimetre => "cm",
        LengthUnit.Metre => "m",
        LengthUnit.Inch => "in",
        LengthUnit.Foot => "ft",
        _ => throw new UnreachableException(),
    };

    /// <summary>Millimetres in one of the unit, exact.</summary>
    internal static decimal MillimetresIn(this LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => 1m,
        LengthUnit.Centimetre => 10m,
        LengthUnit.Metre => 1000m,
        LengthUnit.Inch => 25.4m,
        LengthUnit.Foot => 304.8m,
        _ => throw new UnreachableException(),
    };

    /// <summary>The right word for a unit that was written otherwise, or null when nothing is near.</summary>
    public static string? Nearest(string typed)
    {
        var lower = typed.ToLowerInvariant().TrimEnd('.', 's');
        return lower switch
        {
            "inch" or "inche" or "zoll" or "\"" => "in",
            "foot" or "feet" => "ft",
            "millimeter" or "millimetre" or "mil" => "mm",
            "centimeter" or "centimetre" => "cm",
            "meter" or "metre" => "m",
            _ when FromSymbol(lower) is not null => lower,
            _ => NearestWord.Find(lower, Symbols),
        };
    }
}
