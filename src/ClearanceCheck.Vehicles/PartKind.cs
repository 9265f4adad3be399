using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>A kind of part: what rules select by and what the reader asks for.</summary>
/// <param name="Id">The word in files: <c>brake-line</c>.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Groups">Groups that rules may ask for instead of the kind.</param>
/// <param name="Forms">What the file may say of its shape; the first is the usual one.</param>
public sealed record PartKind(string Id, string Meaning, ImmutableArray<string> Groups, params ImmutableArray<PartFormKind> Forms)
{
    /// <summary>True for what may be described by its mirror image: suspension things that are alike on both sides. Lines, hoses, exhaust, steering and housings never are.</summary>
    public bool IsMirrorable { get; init; }

    /// <summary>True when rules that ask for the group mean this kind.</summary>
    public bool IsIn(string group) => group == PartKinds.AnyGroup || Groups.Contains(group);
}
