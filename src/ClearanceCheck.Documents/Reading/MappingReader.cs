using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Reading;

/// <summary>Reads a map with known keys and remembers which were asked for.</summary>
public sealed class MappingReader
{
    private readonly List<string> known = [];
    private readonly List<(string Key, string What)> missing = [];
    private bool allKeysAllowed;

    internal MappingReader(MappingNode node, ReadingContext context)
    {
        Node = node;
        Context = context;
    }

    /// <summary>The map.</summary>
    public MappingNode Node { get; }

    /// <summary>The path of the map in the file.</summary>
    public string Path => Node.Path;

    /// <summary>What values read from now on share; <see cref="ReadDefaultUnit"/> changes it.</summary>
    public ReadingContext Context { get; private set; }

    /// <summary>The reader of a whole file.</summary>
    public static T? ReadFile<T>(MappingNode root, DiagnosticBag diagnostics, Func<MappingReader, T?> read)
        where T : class => new Field(root, new ReadingContext(diagnostics)).Mapping(read);

    /// <summary>A key that has to be there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="what">What it is, a phrase without a full stop: <c>the height of the stop, bare</c>.</param>
    public Field Required(string key, string what)
    {
        var field = Optional(key);
        if (!field.IsPresent) missing.Add((key, what));
        return field;
    }

    /// <summary>A key that may be left out.</summary>
    public Field Optional(string key)
    {
        Allow(key);
        return new Field(Node.Find(key)?.Value, Context);
    }

    /// <summary>Whether a key is there; it counts as known from now on.</summary>
    public bool Has(string key)
    {
        Allow(key);
        return Node.Find(key) is not null;
    }

    /// <summary>Makes keys known without reading them.</summary>
    public void Allow(params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            if (!known.Contains(key, StringComparer.Ordinal)) known.Add(key);
        }
    }

    /// <summary>Stops this reader from reporting unknown keys: to be called when the value that decides which keys are allowed is faulty.</summary>
    public void AllowAll() => allKeysAllowed = true;

    /// <summary>Reads the file's unit for bare lengths; all fields asked for afterwards, and what is below them, use it.</summary>
    public LengthUnit? ReadDefaultUnit(string key = "unit")
    {
        var field = Optional(key);
        var unit = field.Unit();
        Context = Context with { DefaultUnit = unit?.Value, IsUnitFaulty = field.IsPresent && unit is null };
        return unit?.Value;
    }

    /// <summary>Requires exactly one of two keys that say the same in two ways; false, after a report, when none or both are there.</summary>
    public bool RequireOneOf(string first, string second, string what)
    {
        var (hasFirst, hasSecond) = (Has(first), Has(second));
        if (hasFirst != hasSecond) return true;
        if (hasFirst) Context.Diagnostics.Add(DocumentMessages.BothKeys(Node.Find(first)!.Key.Span, Node.Find(second)!.Key.Span, first, second));
        else Context.Diagnostics.Add(DocumentMessages.NeitherKey(Node, first, second, what));
        return false;
    }

    /// <summary>Reports a fault of the map as a whole at its name.</summary>
    public void Fault(string id, string message, string help, params RelatedSpan[] related) =>
        Context.Diagnostics.Add(Diagnostic.Error(id, Node.Heading, message, help, related));

    /// <summary>Reports unknown and missing keys; true when no required key is missing.</summary>
    internal bool Close()
    {
        var misspelt = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in allKeysAllowed ? [] : Node.Entries)
        {
            if (known.Contains(entry.Key.Text, StringComparer.Ordinal)) continue;
            var nearest = NearestWord.Find(entry.Key.Text, known.Where(key => Node.Find(key) is null)) ?? NearestWord.Find(entry.Key.Text, known);
            if (nearest is not null) misspelt.Add(nearest);
            Context.Diagnostics.Add(DocumentMessages.UnknownKey(entry.Key, nearest, known));
        }

        foreach (var (key, what) in missing)
        {
            // A misspelt key has been reported with its right spelling: saying that the right one is missing would be the same fault twice.
            if (!misspelt.Contains(key)) Context.Diagnostics.Add(DocumentMessages.MissingKey(Node, key, what));
        }

        return missing.Count == 0;
    }
}
