using System.Collections.Immutable;

namespace ClearanceCheck.Rules;

/// <summary>A set of rules as loaded.</summary>
/// <param name="Hash">SHA-256 over the files' names and bytes in ordinal order of the names, 64 small hexadecimal digits.</param>
/// <param name="NotLoaded">One sentence for each rule that could not be loaded.</param>
public sealed record RuleLibrary(string Name, string Version, string Hash, ImmutableArray<Rule> Rules, ImmutableArray<string> NotLoaded);
