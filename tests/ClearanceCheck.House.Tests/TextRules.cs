using System.Text.RegularExpressions;

namespace ClearanceCheck.House.Tests;

/// <summary>What a file may say; each rule lists what breaks it.</summary>
internal static class TextRules
{
    /// <summary>Lines of a source file at most.</summary>
    public const int MostLines = 450;

    // Put together from pieces, so that this file does not name what it forbids.
    private static readonly Regex MachinePath = new(
        @"(?<![\w.])/(" + string.Join('|', "home", "root", "Users", "work", "tmp", "mnt") + @")/\w|[A-Za-z]:[\\/]" + @"Users\b", RegexOptions.CultureInvariant);

    private static readonly Regex Address = new(
        string.Join('|', @"nuget\." + "org", @"npm" + @"js\.", @"pypi\." + "org", @"registry\." + @"\w", "artifact" + "ory", @"pkgs\." + "dev"), RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    // What people type on tape readings and angles: degree, plus-minus, minus, infinity, quotes and primes, squared, cubed, middle dot.
    private const string Typed = "\u00b0\u00b1\u2212\u221e\u2018\u2019\u201c\u201d\u2032\u2033\u00b2\u00b3\u00b7";

    public static IEnumerable<string> MachinePaths(string file, string text) => Lines(file, text, line => MachinePath.IsMatch(line));

    public static IEnumerable<string> Registries(string file, string text) => Lines(file, text, line => Address.IsMatch(line));

    /// <summary>Lines with other characters than ASCII; the two rooms that read what people type may name those characters.</summary>
    public static IEnumerable<string> OtherCharacters(string file, string text)
    {
        bool readsTyped = file.StartsWith("src/ClearanceCheck.Units/", StringComparison.Ordinal) || file.StartsWith("src/ClearanceCheck.Documents/", StringComparison.Ordinal);
        return Lines(file, text, line => line.Any(c => !char.IsAscii(c) && !(readsTyped && Typed.Contains(c, StringComparison.Ordinal))));
    }

    public static bool IsTooLong(string text) => text.TrimEnd('\n').Count(c => c == '\n') + 1 > MostLines;

    private static IEnumerable<string> Lines(string file, string text, Func<string, bool> isWrong) =>
        text.Split('\n').Index().Where(l => isWrong(l.Item)).Select(l => $"{file}:{l.Index + 1}: {l.Item.Trim()}");
}
