using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using Fault = ClearanceCheck.Documents.Diagnostic;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Which rule of a file a fault belongs to, by its place: also those that the YAML reader found before any rule was read.</summary>
internal sealed class RuleFaults
{
    private readonly MappingNode rules;
    private readonly int end;
    private readonly Dictionary<string, List<Fault>> byRule = new(StringComparer.Ordinal);

    public RuleFaults(MappingNode root, MappingNode rules, DiagnosticBag diagnostics)
    {
        this.rules = rules;
        end = root.Entries.Select(e => e.Key.Span.Start).Where(start => start >= rules.Span.End).Append(int.MaxValue).Min();
        foreach (Fault fault in diagnostics.Ordered.Where(d => d.Severity == Documents.Severity.Error)) Take(fault);
    }

    /// <summary>True when a fault stands outside every rule: then what the file is cannot be trusted.</summary>
    public bool OutsideRules { get; private set; }

    /// <summary>The faults of a rule, in file order.</summary>
    public IReadOnlyList<Fault> Of(string rule) => byRule.GetValueOrDefault(rule) ?? [];

    private void Take(Fault fault)
    {
        // A key that stands twice is reported at the second place, where another rule may be the last that was kept.
        MappingEntry? owner = fault.Related.Select(r => Holding(r.Span)).Prepend(Holding(fault.Span)).FirstOrDefault(e => e is not null) ?? Before(fault.Span);
        if (owner is null)
        {
            OutsideRules = true;
            return;
        }

        if (!byRule.TryGetValue(owner.Key.Text, out List<Fault>? faults)) byRule.Add(owner.Key.Text, faults = []);
        faults.Add(fault);
    }

    private MappingEntry? Holding(SourceSpan place) =>
        rules.Entries.FirstOrDefault(e => place.Start >= e.Key.Span.Start && place.Start <= Math.Max(e.Key.Span.End, e.Value.Span.End));

    private MappingEntry? Before(SourceSpan place) =>
        place.Start >= end ? null : rules.Entries.LastOrDefault(e => e.Key.Span.Start <= place.Start);
}
