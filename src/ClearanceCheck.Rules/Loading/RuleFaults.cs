using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using Fault = ClearanceCheck.Documents.Diagnostic;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Which rule or change of a file a fault belongs to, by its place: also those that the YAML reader found before any rule was read.</summary>
internal sealed class RuleFaults
{
    private readonly List<(MappingNode Section, int End)> sections;
    private readonly Dictionary<MappingEntry, List<Fault>> byEntry = [];

    /// <summary>Sorts the faults of a file.</summary>
    /// <param name="root">The file.</param>
    /// <param name="sections">Its maps of rules or changes by id.</param>
    /// <param name="diagnostics">Everything found in the file.</param>
    public RuleFaults(MappingNode root, IEnumerable<MappingNode> sections, DiagnosticBag diagnostics)
    {
        this.sections = [.. sections.Select(s => (s, root.Entries.Select(e => e.Key.Span.Start).Where(start => start >= s.Span.End).Append(int.MaxValue).Min()))];
        foreach (Fault fault in diagnostics.Ordered.Where(d => d.Severity == Documents.Severity.Error)) Take(fault);
    }

    /// <summary>True when a fault stands outside every rule: then what the file is cannot be trusted.</summary>
    public bool OutsideRules { get; private set; }

    /// <summary>The faults of a rule or change, in file order.</summary>
    public IReadOnlyList<Fault> Of(MappingEntry entry) => byEntry.GetValueOrDefault(entry) ?? [];

    /// <summary>What happened to a rule or change, with the number of its faults and the place of the first.</summary>
    public string Sentence(string what, MappingEntry entry) => Sentence(what, entry, Of(entry));

    /// <inheritdoc cref="Sentence(string, MappingEntry)"/>
    public static string Sentence(string what, MappingEntry entry, IReadOnlyList<Fault> faults) =>
        $"{what}: {(faults.Count == 1 ? "1 fault" : FormattableString.Invariant($"{faults.Count} faults, the first"))} at {(faults.Count == 0 ? entry.Key.Span : faults[0].Span)}.";

    private void Take(Fault fault)
    {
        // A key that stands twice is reported at the second place, where another rule may be the last that was kept.
        MappingEntry? owner = fault.Related.Select(r => Holding(r.Span)).Prepend(Holding(fault.Span)).FirstOrDefault(e => e is not null) ?? Before(fault.Span);
        if (owner is null)
        {
            OutsideRules = true;
            return;
        }

        if (!byEntry.TryGetValue(owner, out List<Fault>? faults)) byEntry.Add(owner, faults = []);
        faults.Add(fault);
    }

    private MappingEntry? Holding(SourceSpan place) => sections.SelectMany(s => s.Section.Entries)
        .FirstOrDefault(e => place.Source == e.Key.Span.Source && place.Start >= e.Key.Span.Start && place.Start <= Math.Max(e.Key.Span.End, e.Value.Span.End));

    private MappingEntry? Before(SourceSpan place) => sections
        .Where(s => place.Start >= s.Section.Span.Start && place.Start < s.End)
        .Select(s => s.Section.Entries.LastOrDefault(e => e.Key.Span.Start <= place.Start)).FirstOrDefault(e => e is not null);
}
