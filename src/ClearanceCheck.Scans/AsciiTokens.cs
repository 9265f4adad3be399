using System.Buffers.Text;
using System.Text;

namespace ClearanceCheck.Scans;

/// <summary>Walks through a text word by word without making strings of it; counts lines.</summary>
internal sealed class AsciiTokens(ReadOnlyMemory<byte> text, int position, int line)
{
    private const int MostShown = 40;

    private int at = position;

    /// <summary>The line, from 1, of the word that was read last.</summary>
    public int Line { get; private set; } = line;

    public int Position => at;

    /// <summary>A word as it is shown in a message.</summary>
    public static string Shown(ReadOnlySpan<byte> word) =>
        word.Length <= MostShown ? Encoding.UTF8.GetString(word) : Encoding.UTF8.GetString(word[..MostShown]) + "...";

    /// <summary>A number in the invariant form, the whole word; it may be one that is not finite.</summary>
    public static bool TryNumber(ReadOnlySpan<byte> word, out double value)
    {
        return Utf8Parser.TryParse(word, out value, out int used) && used == word.Length;
    }

    /// <summary>The next word; empty at the end.</summary>
    public ReadOnlySpan<byte> Next()
    {
        ReadOnlySpan<byte> all = text.Span;
        while (at < all.Length && all[at] <= ' ') SkipOne(all);
        int start = at;
        while (at < all.Length && all[at] > ' ') at++;
        return all[start..at];
    }

    /// <summary>Leaves out the rest of the line.</summary>
    public void SkipLine()
    {
        ReadOnlySpan<byte> all = text.Span;
        while (at < all.Length && all[at] is not ((byte)'\n' or (byte)'\r')) at++;
    }

    // CR LF is one end of a line, as LF and CR are.
    private void SkipOne(ReadOnlySpan<byte> all)
    {
        byte c = all[at++];
        if (c == '\n' || (c == '\r' && (at == all.Length || all[at] != '\n'))) Line++;
    }
}
