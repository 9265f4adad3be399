using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>What came of reading an inspection file.</summary>
/// <param name="Vehicle">The model, or null when the file can't be used; then <paramref name="Diagnostics"/> says why.</param>
/// <param name="Diagnostics">Every fault and note, with its place.</param>
/// <param name="Places">Where each element of the model stands: <c>axles/rear</c>, for faults that show only later.</param>
/// <param name="FilesBeside">Relative paths of the files beside it that were read, in order.</param>
public sealed record InspectionReading(
    Vehicle? Vehicle, DiagnosticBag Diagnostics, ImmutableSortedDictionary<string, SourceSpan> Places, ImmutableArray<string> FilesBeside);
