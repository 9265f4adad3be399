using System.Text.RegularExpressions;

namespace ClearanceCheck.Vehicles.Tires;

/// <summary>The forms of a tire size. They take figures too large on purpose, so that a fault can be told by its name.</summary>
internal static partial class TireSizePatterns
{
    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture;

    private const string Rim = @"\s*(?<construction>ZR|R|D|B|-)\s*(?<rim>[0-9]{1,4}(\.[0-9]{1,2})?)";

    // Kind of service and load range, then load index and speed symbol: "LT", "/E", "LT/C 109Q", "121/118Q M+S", "(104Y) XL".
    private const string Tail = @"(\s*/?\s*(LT|XL|SL|C|[B-N]))?(\s*/\s*[B-N]|\s+(LT|XL|[B-N]))?(\s+\(?[0-9]{2,3}(/[0-9]{2,3})?\s*[A-Y][1-8]?\)?)?(\s+(LT|XL|SL|M\+S|[B-N]))?";

    /// <summary>Section width in mm and aspect ratio: <c>LT285/75R16 126Q</c>.</summary>
    [GeneratedRegex(@"\A((P|LT|ST|T)\s*)?(?<width>[0-9]{1,4})\s*/\s*(?<aspect>[0-9]{1,4})" + Rim + Tail + @"\z", Options)]
    public static partial Regex Metric();

    /// <summary>Overall diameter and section width in inches: <c>35x12.50R17LT</c>.</summary>
    [GeneratedRegex(@"\A(LT\s*)?(?<diameter>[0-9]{1,4}(\.[0-9]{1,2})?)\s*[x\u00D7]\s*(?<width>[0-9]{1,4}(\.[0-9]{1,2})?)" + Rim + Tail + @"\z", Options)]
    public static partial Regex Flotation();
}
