using System.Collections.Immutable;
using ClearanceCheck.Quantities.Sets;

namespace ClearanceCheck.Rules;

/// <summary>A limit on a quantity for selected parts, with everything that is said about it.</summary>
public sealed record Rule
{
    /// <summary>Named after the bad thing; stable for ever.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required Severity Severity { get; init; }

    public string? Consequence { get; init; }

    /// <summary>The quantity's word in the catalogue.</summary>
    public required string Quantity { get; init; }

    /// <summary>The poses over which its worst value is looked for.</summary>
    public PoseSet Over { get; init; } = PoseSet.AllPoses;

    public required PartSelector Part { get; init; }

    /// <summary>The other part of a pair; null for quantities of one part.</summary>
    public PartSelector? To { get; init; }

    /// <summary>Facts that must all hold for the rule to apply at all.</summary>
    public ImmutableArray<string> OnlyWhen { get; init; } = [];

    public required RuleLimit Limit { get; init; }

    /// <summary>Other limits for special cases; the first whose facts all hold is taken.</summary>
    public ImmutableArray<RuleCase> Cases { get; init; } = [];

    /// <summary>Of a rule whose limit holds a margin already: the value alone decides on the limit, and this floor, in the quantity's unit, is judged with the give or take. Null for a rule whose limit itself is judged so.</summary>
    public double? Floor { get; init; }

    /// <summary>On what terms a finding may be accepted; null where it never may.</summary>
    public RuleAcceptance? Accept { get; init; }

    public required RuleSource Source { get; init; }

    public string? Advice { get; init; }

    public string? HandCheck { get; init; }

    /// <summary>Quantities to look at again after the remedy.</summary>
    public ImmutableArray<string> Recheck { get; init; } = [];

    public ImmutableArray<RuleExample> Examples { get; init; } = [];

    /// <summary>Where each field comes from, in the order in which they were read; empty for a rule that was not read from a file.</summary>
    public ImmutableArray<FieldOrigin> Origins { get; init; } = [];

    /// <summary>The rule's own limit and those of its cases.</summary>
    public IEnumerable<RuleLimit> Limits => Cases.Select(c => c.Limit).Prepend(Limit);

    /// <summary>Judges one place against a limit of this rule.</summary>
    /// <inheritdoc cref="Conformity.Judge"/>
    public ConformityOutcome Judge(RuleLimit limit, double value, double bound, double giveOrTake) => Floor is { } floor
        ? Conformity.JudgeSimply(limit, floor, value, bound, giveOrTake)
        : Conformity.Judge(limit, value, bound, giveOrTake);

    /// <summary>The limit that applies when exactly these facts hold, and the facts of the case that set it.</summary>
    public (RuleLimit Limit, ImmutableArray<string> Because) LimitFor(IReadOnlySet<string> facts)
    {
        foreach (RuleCase special in Cases)
            if (special.When.All(facts.Contains)) return (special.Limit, special.When);
        return (Limit, []);
    }
}

/// <summary>Another limit for a special case.</summary>
public sealed record RuleCase(ImmutableArray<string> When, RuleLimit Limit);

/// <summary>Where a limit comes from.</summary>
/// <param name="Basis"><c>published</c>, <c>common-practice</c>, <c>plain-fact</c> or <c>shop</c>.</param>
/// <param name="Known"><c>read</c>, <c>second-hand</c>, <c>from-memory</c> or <c>none</c>.</param>
public sealed record RuleSource(string Basis, string Known, string Text);
