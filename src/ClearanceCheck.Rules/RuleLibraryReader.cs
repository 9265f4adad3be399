using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules;

/// <summary>Reads a rule library that stands alone. A faulty rule is reported and left out; the others still load.</summary>
public static class RuleLibraryReader
{
    /// <summary>Reads all files of one library, in ordinal order of their names.</summary>
    /// <param name="files">The files; their order does not matter.</param>
    /// <param name="quantities">What rules can limit.</param>
    /// <returns>
    /// The library, with a sentence in <see cref="RuleLibrary.NotLoaded"/> for each rule that was left out; null when a file can't be read,
    /// its header is unusable, or a fault stands outside every rule. Each fault with its place is among the diagnostics.
    /// </returns>
    public static (RuleLibrary? Library, DiagnosticBag Diagnostics) Read(IReadOnlyList<RuleFile> files, QuantityCatalogue quantities) =>
        RuleSetReader.Read([files], [], quantities, null);
}
