using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A kind of part: what rules select by and what the reader asks for.</summary>
/// <param name="Id">The word in files: <c>brake-line</c>.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Groups">Groups that rules may ask for instead of the kind.</param>
/// <param name="Form">What the file has to say of it.</param>
public sealed record PartKind(string Id, string Meaning, ImmutableArray<string> Groups, PartFormKind Form);
