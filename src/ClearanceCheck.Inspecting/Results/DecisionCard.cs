using System.Collections.Immutable;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>The decision, why, and what to do next.</summary>
/// <param name="Reasons">One sentence each, the gravest first.</param>
/// <param name="DoThis">At most seven lines, in the order to do them.</param>
public sealed record DecisionCard(DecisionKind Kind, ImmutableArray<string> Reasons, ImmutableArray<ActionLine> DoThis);

/// <summary>One thing to do.</summary>
/// <param name="FindingId">The finding it comes from; null when it comes from none.</param>
public sealed record ActionLine(string Text, string? FindingId);
