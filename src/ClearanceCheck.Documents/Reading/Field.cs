using System.Globalization;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Reading;

/// <summary>A value of a file before it is read as something; it may be absent.</summary>
/// <remarks>Every reader gives null when the value is absent or faulty. A faulty value has been reported once by then: the caller adds nothing.</remarks>
public readonly struct Field
{
    private readonly ReadingContext context;

    /// <summary>A value to be read.</summary>
    public Field(Node? node, ReadingContext context)
    {
        Node = node;
        this.context = context;
    }

    /// <summary>The value's node, or null when it is absent.</summary>
    public Node? Node { get; }

    /// <summary>Whether the value stands in the file, right or wrong.</summary>
    public bool IsPresent => Node is not null;

    /// <summary>Text with hidden characters made visible, cut at 200 characters with a note.</summary>
    public Placed<string>? Text()
    {
        if (Scalar("text") is not { } scalar) return null;
        if (scalar.Style == ScalarStyle.Plain && LooksRewritten(scalar.Text)) return Fail<string>(DocumentMessages.NumberAsText(scalar));
        var trimmed = scalar.Text.Trim();
        if (trimmed.Length == 0) return Fail<string>(DocumentMessages.EmptyText(scalar));
        var visible = VisibleText.Of(trimmed.ReplaceLineEndings(" "));
        if (visible.Length <= DocumentLimits.MostShownText) return new Placed<string>(visible, scalar);
        context.Diagnostics.Add(DocumentMessages.TextCut(scalar));
        return new Placed<string>(Cut(visible), scalar);
    }

    /// <summary>An id: small letters, digits, dashes.</summary>
    public Placed<string>? Id()
    {
        if (Scalar("an id") is not { } scalar) return null;
        return IdText.IsId(scalar.Text) ? new Placed<string>(scalar.Text, scalar) : Fail<string>(DocumentMessages.NotAnId(scalar));
    }

    /// <summary>One of a closed set of words.</summary>
    public Placed<string>? Word(IReadOnlyCollection<string> allowed)
    {
        if (Scalar("a word") is not { } scalar) return null;
        return allowed.Contains(scalar.Text, StringComparer.Ordinal) ? new Placed<string>(scalar.Text, scalar) : Fail<string>(DocumentMessages.UnknownWord(scalar, allowed, NearestWord.Find(scalar.Text, allowed)));
    }

    /// <summary>What one of a closed set of words stands for.</summary>
    public Placed<T>? Choice<T>(IReadOnlyDictionary<string, T> meanings) =>
        Word([.. meanings.Keys]) is { } word ? new Placed<T>(meanings[word.Value], word.Node) : null;

    /// <summary>A length; bare numbers have the file's unit.</summary>
    public Placed<LengthReading>? Length(LengthRange? range = null)
    {
        if (Scalar("a length") is not { } scalar) return null;
        var parsed = LengthText.Parse(scalar.Text, context.DefaultUnit);
        if (context.IsUnitFaulty && parsed.Fault is { Id: "length.no-unit" }) return null;
        if (Take(parsed, scalar) is not { } read) return null;
        return range is null || range.Holds(read.Value.Length) ? read : Fail<LengthReading>(DocumentMessages.OutOfRange(scalar, range, read.Value));
    }

    /// <summary>An angle with its unit.</summary>
    public Placed<Angle>? Angle() => Scalar("an angle") is { } scalar ? Take(QuantityText.ParseAngle(scalar.Text), scalar) : null;

    /// <summary>A share with its percent sign.</summary>
    public Placed<Percentage>? Percentage() => Scalar("a share") is { } scalar ? Take(QuantityText.ParsePercentage(scalar.Text), scalar) : null;

    /// <summary>A temperature with its unit.</summary>
    public Placed<Temperature>? Temperature() => Scalar("a temperature") is { } scalar ? Take(QuantityText.ParseTemperature(scalar.Text), scalar) : null;

    /// <summary>A stiffness with its unit.</summary>
    public Placed<Stiffness>? Stiffness() => Scalar("a stiffness") is { } scalar ? Take(QuantityText.ParseStiffness(scalar.Text), scalar) : null;

    /// <summary>A stiffness against turning with its unit.</summary>
    public Placed<TurningStiffness>? TurningStiffness() =>
        Scalar("a stiffness against turning") is { } scalar ? Take(QuantityText.ParseTurningStiffness(scalar.Text), scalar) : null;

    /// <summary>A plain finite number.</summary>
    public Placed<double>? Number() => Scalar("a number") is { } scalar ? Take(QuantityText.ParseNumber(scalar.Text), scalar) : null;

    /// <summary>A whole number from 1 on.</summary>
    public Placed<int>? PositiveInteger()
    {
        if (Scalar("a whole number") is not { } scalar) return null;
        var isRead = int.TryParse(scalar.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        return isRead && number > 0 && scalar.Text[0] != '0' ? new Placed<int>(number, scalar) : Fail<int>(DocumentMessages.NotAPositiveInteger(scalar));
    }

    /// <summary>A date as <c>2031-04-02</c>.</summary>
    public Placed<DateOnly>? Date()
    {
        if (Scalar("a date") is not { } scalar) return null;
        var isRead = DateOnly.TryParseExact(scalar.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date);
        return isRead ? new Placed<DateOnly>(date, scalar) : Fail<DateOnly>(DocumentMessages.NotADate(scalar));
    }

    /// <summary>A unit of length by its word.</summary>
    public Placed<LengthUnit>? Unit()
    {
        if (Scalar("a unit of length") is not { } scalar) return null;
        return LengthUnits.FromSymbol(scalar.Text) is { } unit
            ? new Placed<LengthUnit>(unit, scalar)
            : Fail<LengthUnit>(DocumentMessages.UnknownWord(scalar, LengthUnits.Symbols, LengthUnits.Nearest(scalar.Text)));
    }

    /// <summary>A path below the folder of the file, strokes forward, <c>.</c> and <c>..</c> resolved.</summary>
    public Placed<string>? RelativePath()
    {
        if (Scalar("a path") is not { } scalar) return null;
        return FolderPath.TryResolve(scalar.Text, out var resolved) ? new Placed<string>(resolved, scalar) : Fail<string>(DocumentMessages.OutsideFolder(scalar));
    }

    /// <summary>A point <c>[x, y, z]</c>, each within 15 m of zero unless told otherwise.</summary>
    public Placed<LengthTriple>? Triple(LengthRange? range = null)
    {
        if (Lengths(3, range ?? LengthRange.PlaceOnVehicle) is not { } read) return null;
        return new Placed<LengthTriple>(new LengthTriple(read.Value[0], read.Value[1], read.Value[2]), read.Node);
    }

    /// <summary>A list of points.</summary>
    public Placed<IReadOnlyList<Placed<LengthTriple>>>? Triples(LengthRange? range = null) => List(item => item.Triple(range));

    /// <summary>A list of lengths, of a given number if told.</summary>
    public Placed<IReadOnlyList<LengthReading>>? Lengths(int? count = null, LengthRange? range = null) =>
        List(item => item.Length(range), count) is { } read ? new Placed<IReadOnlyList<LengthReading>>([.. read.Value.Select(item => item.Value)], read.Node) : null;

    /// <summary>A list of words, out of a closed set if told; none twice.</summary>
    public Placed<IReadOnlyList<Placed<string>>>? Words(IReadOnlyCollection<string>? allowed = null)
    {
        var read = List(item => allowed is null ? item.Text() : item.Word(allowed));
        if (read is null) return null;
        var seen = new Dictionary<string, Node>(StringComparer.Ordinal);
        foreach (var word in read.Value)
        {
            if (!seen.TryAdd(word.Value, word.Node)) return Fail<IReadOnlyList<Placed<string>>>(DocumentMessages.WordTwice(word, seen[word.Value]));
        }

        return read;
    }

    /// <summary>A list of whole numbers from 1 on.</summary>
    public Placed<IReadOnlyList<int>>? PositiveIntegers() =>
        List(item => item.PositiveInteger()) is { } read ? new Placed<IReadOnlyList<int>>([.. read.Value.Select(item => item.Value)], read.Node) : null;

    /// <summary>A list with each item read; null when any is faulty, after all have been looked at.</summary>
    public Placed<IReadOnlyList<T>>? List<T>(Func<Field, T?> read, int? count = null)
        where T : class
    {
        if (Items(count) is not { } items) return null;
        var values = items.Select(read).ToList();
        return values.Contains(null) ? null : new Placed<IReadOnlyList<T>>(values!, Node!);
    }

    /// <summary>The items of a list, of a given number if told, before they are read.</summary>
    public IReadOnlyList<Field>? Items(int? count = null)
    {
        if (Node is null or FaultyNode) return null;
        if (Node is not SequenceNode list) return FailShape<IReadOnlyList<Field>>("a list", count is null ? "Write `[ first, second ]`, or one `- item` a line." : "Write " + Blank(count.Value) + ".");
        if (list.Items.Count == 0) return Report<IReadOnlyList<Field>>(DocumentMessages.EmptyList(list));
        if (count is { } needed && list.Items.Count != needed) return Report<IReadOnlyList<Field>>(DocumentMessages.WrongCount(list, needed, Blank(needed)));
        var shared = context;
        return [.. list.Items.Select(item => new Field(item, shared))];
    }

    /// <summary>A map with known keys; keys that were not asked for and required ones that are missing are reported when <paramref name="read"/> returns.</summary>
    public T? Mapping<T>(Func<MappingReader, T?> read)
        where T : class
    {
        if (Node is null or FaultyNode) return null;
        if (Node is not MappingNode mapping) return FailShape<T>("a map of keys", "Write `{ key: value }`, or one `key: value` a line below, indented.");
        var reader = new MappingReader(mapping, context);
        var made = read(reader);
        return reader.Close() ? made : null;
    }

    /// <summary>The entries of a map whose keys the file chooses; ids unless told otherwise. Entries with a faulty key are reported and left out.</summary>
    public IReadOnlyList<(Placed<string> Key, Field Value)>? Entries(bool keysAreIds = true)
    {
        if (Node is null or FaultyNode) return null;
        if (Node is not MappingNode mapping) return FailShape<IReadOnlyList<(Placed<string>, Field)>>("a map by id", "Write `the-id: ...`, one a line below, indented.");
        var entries = new List<(Placed<string>, Field)>();
        foreach (var entry in mapping.Entries)
        {
            if (keysAreIds && !IdText.IsId(entry.Key.Text)) context.Diagnostics.Add(DocumentMessages.NotAnId(entry.Key));
            else entries.Add((new Placed<string>(entry.Key.Text, entry.Key), new Field(entry.Value, context)));
        }

        return entries;
    }

    /// <summary>Reports a fault of this value that only the caller can know; does nothing for an absent or faulty value.</summary>
    public void Fault(string id, string message, string help, params RelatedSpan[] related)
    {
        if (Node is null or FaultyNode) return;
        context.Diagnostics.Add(Diagnostic.Error(id, Node.Span, message, help, related));
    }

    private ScalarNode? Scalar(string what) => Node switch
    {
        null or FaultyNode => null,
        ScalarNode scalar => scalar,
        _ => FailShape<ScalarNode>(what, "Write one value after the colon."),
    };

    private Placed<T>? Take<T>(ParseResult<T> parsed, ScalarNode scalar)
        where T : struct =>
        parsed.TryGet(out var value, out var fault) ? new Placed<T>(value, scalar) : Fail<T>(DocumentMessages.Unread(scalar, fault));

    private Placed<T>? Fail<T>(Diagnostic diagnostic) => Report<Placed<T>>(diagnostic);

    private T? FailShape<T>(string needed, string help)
        where T : class => Report<T>(DocumentMessages.WrongShape(Node!, needed, help));

    private T? Report<T>(Diagnostic diagnostic)
        where T : class
    {
        context.Diagnostics.Add(diagnostic);
        return null;
    }

    private static string Blank(int count) => count == 3 ? "`[x, y, z]`" : "`[" + string.Join(", ", Enumerable.Repeat("...", count)) + "]`";

    private static string Cut(string text)
    {
        var cut = DocumentLimits.MostShownText - 3;
        return text[..(char.IsHighSurrogate(text[cut - 1]) ? cut - 1 : cut)] + "...";
    }

    /// <summary>Whether an editor could write this number back as another text: <c>1.10</c> as 1.1, <c>010</c> as 10.</summary>
    private static bool LooksRewritten(string text)
    {
        if (text.Length < 2 || !text.All(c => char.IsAsciiDigit(c) || c == '.') || text.Count(c => c == '.') > 1) return false;
        return (text[0] == '0' && text[1] != '.') || (text.Contains('.', StringComparison.Ordinal) && text[^1] is '0' or '.');
    }
}
