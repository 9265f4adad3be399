using System.Text;

namespace ClearanceCheck.Documents.Reading;

/// <summary>Ids: small letters, digits and dashes, a letter first, up to 60 characters.</summary>
public static class IdText
{
    /// <summary>Most characters of an id.</summary>
    public const int MostLetters = 60;

    /// <summary>Whether a text is an id.</summary>
    public static bool IsId(string text) =>
        text.Length is > 0 and <= MostLetters && text[0] is >= 'a' and <= 'z' && text.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' or '-');

    /// <summary>The id that is nearest to what was typed.</summary>
    public static string Repair(string typed)
    {
        var id = new StringBuilder();
        foreach (var c in typed.Trim().ToLowerInvariant())
        {
            if (c is >= 'a' and <= 'z' or >= '0' and <= '9') id.Append(c);
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
            if (id.Length == MostLetters - 2) break;
        }

        var repaired = id.ToString().TrimEnd('-');
        return repaired.Length > 0 && char.IsAsciiDigit(repaired[0]) ? "n-" + repaired : repaired;
    }
}
