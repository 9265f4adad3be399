using System.Collections.Immutable;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>Something that a whole vehicle is expected to have.</summary>
/// <param name="Id">The word in <c>absent</c>.</param>
/// <param name="Title">What it is and where, in words.</param>
/// <param name="Expected">How many of it.</param>
/// <param name="Parts">Ids of the parts that fill it.</param>
/// <param name="Reason">Why it is absent, as typed; null else.</param>
public sealed record CoverageCard(
    string Id, string Title, Severity Severity, string Consequence, SourceCard Source, CoverageOutcome Outcome, int Expected, ImmutableArray<string> Parts, string? Reason);
