using System.Collections.Immutable;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Something that a whole vehicle is expected to have in the file.</summary>
/// <param name="Title">What it is, in words that go behind "no": <c>brake hose to the wheel</c>.</param>
/// <param name="Consequence">What stays unknown when it is not looked at.</param>
public sealed record CoverageRow(Expectation Expectation, string Title, Severity Severity, string Consequence, RuleSource Source)
{
    /// <summary>Where each field was typed, in the order of the fields.</summary>
    public ImmutableArray<FieldOrigin> Origins { get; init; } = [];
}
