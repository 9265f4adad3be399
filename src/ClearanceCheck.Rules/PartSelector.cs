using System.Collections.Immutable;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules;

/// <summary>Which parts a rule is about: every key that is given must hold, a list means any of its words.</summary>
public sealed record PartSelector
{
    public ImmutableArray<string> Kinds { get; init; } = [];

    public ImmutableArray<string> Groups { get; init; } = [];

    public ImmutableArray<string> Ids { get; init; } = [];

    public bool Selects(Part part) =>
        (Kinds.IsEmpty || Kinds.Contains(part.Kind.Id))
        && (Groups.IsEmpty || Groups.Any(part.Kind.IsIn))
        && (Ids.IsEmpty || Ids.Contains(part.Id));

    /// <summary>True when a part of this kind could be selected; ids are left out.</summary>
    public bool CouldSelect(PartKind kind) =>
        (Kinds.IsEmpty || Kinds.Contains(kind.Id)) && (Groups.IsEmpty || Groups.Any(kind.IsIn));

    /// <summary>True when the part of an example is one that is selected; what the example leaves unsaid counts as selected.</summary>
    public bool Covers(ExamplePart part)
    {
        if (part.Id is { } id && !Ids.IsEmpty && !Ids.Contains(id)) return false;
        return part.Kind is not { } word || (PartKinds.Find(word) is { } kind && CouldSelect(kind));
    }

    /// <summary>The selector in words, for "no such part".</summary>
    public string InWords()
    {
        IEnumerable<string> said = [.. Kinds.Select(k => $"kind {k}"), .. Groups.Select(g => $"group {g}"), .. Ids.Select(i => $"id {i}")];
        return string.Join(", ", said);
    }
}
