using System.Globalization;
using System.Text;

namespace ClearanceCheck.Scans.Ply;

/// <summary>Reads the header of a PLY file, line by line.</summary>
internal sealed class PlyHeaderReader
{
    private const string Version = "1.0";

    private readonly ScanFile file;
    private readonly List<PlyElement> elements = [];
    private readonly List<PlyProperty> properties = [];
    private PlyFormat? format;
    private int at;
    private int line;

    private PlyHeaderReader(ScanFile file) => this.file = file;

    public static PlyHeader? Read(ScanFile file) => new PlyHeaderReader(file).Lines();

    private PlyHeader? Lines()
    {
        if (!TryLine(out string? first) || first.TrimEnd() != "ply")
        {
            ScanMessages.PlyStart(file);
            return null;
        }

        while (TryLine(out string? text))
        {
            string[] words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (words is ["end_header"]) return Whole();
            if (IsSound(words)) continue;
            ScanMessages.PlyHeaderLine(file, line, AsciiTokens.Shown(Encoding.UTF8.GetBytes(text.Trim())));
            return null;
        }

        ScanMessages.PlyHeaderEnds(file);
        return null;
    }

    private PlyHeader? Whole()
    {
        if (format is { } known) return new PlyHeader(known, elements, at, line + 1);
        ScanMessages.PlyHeaderLine(file, line, "end_header");
        return null;
    }

    private bool IsSound(string[] words) => words switch
    {
        [] => true,
        ["comment" or "obj_info", ..] => true,
        ["format", var kind, Version] => IsFormat(kind),
        ["element", var name, var count] => IsElement(name, count),
        ["property", "list", var count, var item, var name] => IsList(count, item, name),
        ["property", var type, var name] => IsNumber(type, name),
        _ => false,
    };

    private bool IsFormat(string kind)
    {
        if (format is not null) return false;
        format = kind switch
        {
            "ascii" => PlyFormat.Text,
            "binary_little_endian" => PlyFormat.LittleEndian,
            "binary_big_endian" => PlyFormat.BigEndian,
            _ => null,
        };
        return format is not null;
    }

    private bool IsElement(string name, string typed)
    {
        if (format is null || elements.Exists(e => e.Name == name)) return false;
        if (!long.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out long count)) return false;
        properties.Clear();
        elements.Add(new PlyElement(name, count, []));
        return true;
    }

    private bool IsNumber(string type, string name) => PlyTypes.FromWord(type) is { } known && IsProperty(new PlyProperty(name, known, null));

    private bool IsList(string count, string item, string name) =>
        PlyTypes.FromWord(count) is { } length && length.IsWhole() && PlyTypes.FromWord(item) is { } known && IsProperty(new PlyProperty(name, known, length));

    private bool IsProperty(PlyProperty property)
    {
        if (elements.Count == 0 || properties.Exists(p => p.Name == property.Name)) return false;
        properties.Add(property);
        elements[^1] = elements[^1] with { Properties = [.. properties] };
        return true;
    }

    // The header is short and its lines end with LF, CR LF or CR; the body may start with any byte right after.
    private bool TryLine([System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out string? text)
    {
        text = null;
        ReadOnlySpan<byte> rest = file.Bytes[at..Math.Min(file.Length, ScanLimits.MostHeader)];
        int end = rest.IndexOfAny((byte)'\n', (byte)'\r');
        if (end < 0) return false;
        text = Encoding.Latin1.GetString(rest[..end]);
        at += end + 1;
        if (rest[end] == '\r' && at < file.Length && file.Bytes[at] == '\n') at++;
        line++;
        return true;
    }
}
