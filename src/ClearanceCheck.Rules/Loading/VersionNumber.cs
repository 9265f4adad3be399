using System.Globalization;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Loading;

/// <summary>The version of a library or overlay: three numbers, compared from the first to the last.</summary>
internal readonly record struct VersionNumber(int Major, int Minor, int Patch) : IComparable<VersionNumber>
{
    private const int MostDigits = 6;

    public int CompareTo(VersionNumber other) => (Major, Minor, Patch).CompareTo((other.Major, other.Minor, other.Patch));

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Major}.{Minor}.{Patch}");

    /// <summary>The version as typed with its place and its numbers, or null when it is absent or faulty.</summary>
    public static (Placed<string> Text, VersionNumber Number)? Read(Field field)
    {
        if (field.Node is not ScalarNode scalar)
        {
            field.Text();
            return null;
        }

        if (Parse(scalar.Text) is { } number) return (new Placed<string>(scalar.Text, scalar), number);
        RuleMessages.NoVersion(field, scalar.Text);
        return null;
    }

    public static VersionNumber? Parse(string text)
    {
        string[] numbers = text.Split('.');
        if (numbers.Length != 3 || !numbers.All(n => n.Length is > 0 and <= MostDigits && n.All(char.IsAsciiDigit) && (n.Length == 1 || n[0] != '0'))) return null;
        return new VersionNumber(Number(numbers[0]), Number(numbers[1]), Number(numbers[2]));
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
