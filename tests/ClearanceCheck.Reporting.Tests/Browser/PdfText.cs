using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ClearanceCheck.Reporting.Tests.Browser;

/// <summary>The text of each page of a PDF as Chromium prints it: plain objects, deflated streams, glyphs with a table to Unicode.</summary>
/// <remarks>No reader of PDF in general: a form that it does not know gives a page without text, and the test that asks for text fails.</remarks>
internal static partial class PdfText
{
    public static async Task<string[]> Pages(byte[] pdf)
    {
        string raw = Encoding.Latin1.GetString(pdf);
        Dictionary<string, Match> objects = [];
        foreach (Match found in ObjectStart().Matches(raw)) objects[found.Groups["number"].Value] = found;
        List<string> pages = [];
        foreach (Match page in objects.Values.Where(o => PageType().IsMatch(o.Groups["dictionary"].Value)))
        {
            string dictionary = page.Groups["dictionary"].Value;
            Dictionary<string, Dictionary<string, string>> fonts = [];
            foreach (Match font in FontName().Matches(dictionary)) fonts[font.Groups["name"].Value] = await Table(objects, pdf, font.Groups["number"].Value);
            pages.Add(Decode(await Stream(objects, pdf, Contents().Match(dictionary).Groups["number"].Value), fonts));
        }

        return [.. pages];
    }

    private static string Decode(string content, Dictionary<string, Dictionary<string, string>> fonts)
    {
        StringBuilder text = new();
        Dictionary<string, string>? table = null;
        foreach (Match step in TextStep().Matches(content))
        {
            if (step.Groups["font"].Success)
            {
                fonts.TryGetValue(step.Groups["font"].Value, out table);
                text.Append(' ');
                continue;
            }

            if (table is null || table.Count == 0) continue;
            int width = table.First().Key.Length;
            foreach (Match glyphs in Hexadecimal().Matches(step.Value))
                for (int i = 0; i + width <= glyphs.Groups[1].Length; i += width)
                    text.Append(table.GetValueOrDefault(glyphs.Groups[1].Value.Substring(i, width).ToUpperInvariant()) ?? "");
        }

        return text.ToString();
    }

    private static async Task<Dictionary<string, string>> Table(Dictionary<string, Match> objects, byte[] pdf, string fontNumber)
    {
        Dictionary<string, string> table = [];
        Match unicode = ToUnicode().Match(objects[fontNumber].Groups["dictionary"].Value);
        if (!unicode.Success) return table;
        string map = await Stream(objects, pdf, unicode.Groups["number"].Value);
        foreach (Match block in CharacterBlock().Matches(map))
            foreach (Match pair in Pair().Matches(block.Value)) table[pair.Groups[1].Value.ToUpperInvariant()] = Characters(pair.Groups[2].Value, 0);
        foreach (Match block in RangeBlock().Matches(map))
            foreach (Match range in Range().Matches(block.Value))
            {
                int first = Hex(range.Groups[1].Value);
                for (int glyph = first; glyph <= Hex(range.Groups[2].Value); glyph++)
                    table[glyph.ToString("X" + range.Groups[1].Length.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)] = Characters(range.Groups[3].Value, glyph - first);
            }

        return table;
    }

    private static async Task<string> Stream(Dictionary<string, Match> objects, byte[] pdf, string number)
    {
        Match holder = objects[number];
        int length = int.Parse(Length().Match(holder.Groups["dictionary"].Value).Groups[1].Value, CultureInfo.InvariantCulture);
        using MemoryStream packed = new(pdf, holder.Index + holder.Length, length);
        if (!holder.Groups["dictionary"].Value.Contains("/FlateDecode", StringComparison.Ordinal))
            return Encoding.Latin1.GetString(pdf, holder.Index + holder.Length, length);
        await using ZLibStream plain = new(packed, CompressionMode.Decompress);
        using StreamReader reader = new(plain, Encoding.Latin1);
        return await reader.ReadToEndAsync();
    }

    private static string Characters(string hexadecimal, int offset)
    {
        char[] units = [.. Enumerable.Range(0, hexadecimal.Length / 4).Select(i => (char)Hex(hexadecimal.Substring(i * 4, 4)))];
        units[^1] = (char)(units[^1] + offset);
        return new string(units);
    }

    private static int Hex(string text) => int.Parse(text, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<number>\d+) 0 obj\s*(?<dictionary><<.*?>>)\s*(?:stream\r?\n|endobj)", RegexOptions.Singleline)]
    private static partial Regex ObjectStart();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PageType();

    [GeneratedRegex(@"/(?<name>F\d+) (?<number>\d+) 0 R")]
    private static partial Regex FontName();

    [GeneratedRegex(@"/Contents (?<number>\d+) 0 R")]
    private static partial Regex Contents();

    [GeneratedRegex(@"/ToUnicode (?<number>\d+) 0 R")]
    private static partial Regex ToUnicode();

    [GeneratedRegex(@"/Length (\d+)")]
    private static partial Regex Length();

    [GeneratedRegex(@"/(?<font>F\d+) [\d.]+ Tf|<[0-9A-Fa-f]+>\s*Tj|\[[^\]]*\]\s*TJ")]
    private static partial Regex TextStep();

    [GeneratedRegex("<([0-9A-Fa-f]+)>")]
    private static partial Regex Hexadecimal();

    [GeneratedRegex("beginbfchar.*?endbfchar", RegexOptions.Singleline)]
    private static partial Regex CharacterBlock();

    [GeneratedRegex("beginbfrange.*?endbfrange", RegexOptions.Singleline)]
    private static partial Regex RangeBlock();

    [GeneratedRegex("^<([0-9A-Fa-f]+)> <([0-9A-Fa-f]{4,})>", RegexOptions.Multiline)]
    private static partial Regex Pair();

    [GeneratedRegex("^<([0-9A-Fa-f]+)> <([0-9A-Fa-f]+)> <([0-9A-Fa-f]{4,})>", RegexOptions.Multiline)]
    private static partial Regex Range();
}
