namespace ClearanceCheck.Rules;

/// <summary>One file of a rule library, as it was read by a door.</summary>
/// <param name="Name">The bare name, as messages show it: <c>brake-lines.yaml</c>.</param>
/// <param name="Content">The bytes, UTF-8.</param>
public sealed record RuleFile(string Name, ReadOnlyMemory<byte> Content);
