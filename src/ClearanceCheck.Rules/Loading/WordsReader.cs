using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads lists of words of a closed set.</summary>
internal static class WordsReader
{
    /// <summary>The words; none when the list is absent, null when it is faulty.</summary>
    public static ImmutableArray<string>? Read(Field field, IReadOnlyCollection<string> allowed)
    {
        if (!field.IsPresent) return [];
        return field.Words(allowed) is { } words ? [.. words.Value.Select(w => w.Value)] : null;
    }
}
