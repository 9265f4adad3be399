using System.Collections.Immutable;

namespace ClearanceCheck.Rules.Tests.Hazards;

/// <summary>A check that a master technician makes after a lift, and what of the base library makes it.</summary>
/// <param name="Family">What of the vehicle it is about.</param>
/// <param name="Check">What is checked.</param>
internal sealed record HazardRow(string Family, string Check)
{
    /// <summary>Rules, items and expectations that serve it, by id.</summary>
    public ImmutableArray<string> ServedBy { get; init; } = [];

    /// <summary>What of it waits, and for what; null when nothing does.</summary>
    public string? Waits { get; init; }

    /// <summary>What else of the program serves it; null when nothing does.</summary>
    public string? Also { get; init; }
}
