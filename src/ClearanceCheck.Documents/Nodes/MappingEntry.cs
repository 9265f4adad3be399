namespace ClearanceCheck.Documents.Nodes;

/// <summary>A key with its value.</summary>
/// <param name="Key">The key; its path is the value's.</param>
/// <param name="Value">The value.</param>
public sealed record MappingEntry(ScalarNode Key, Node Value);
