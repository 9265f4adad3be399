using System.Collections.Immutable;

namespace ClearanceCheck.Inspecting.Results;

/// <summary>The limit that was applied, in the quantity's unit: the side that decides. Neither side is set where a property of the part sets the limit and stands nowhere.</summary>
/// <param name="Because">The facts of the case that set it; empty for the rule's own limit.</param>
public sealed record LimitCard(double? AtLeast, double? AtMost, ImmutableArray<string> Because)
{
    /// <summary>The other side of a limit with two; it is met with more to spare.</summary>
    public double? Other { get; init; }

    /// <summary>What has to hold with the give or take where the value alone decides on the limit; null where the limit itself has to.</summary>
    public double? Floor { get; init; }

    /// <summary>The property of the part that sets the limit, in words; null for a limit that is the same for all.</summary>
    public string? By { get; init; }

    /// <summary>The smallest value that is right; null where any is small enough.</summary>
    public double? Least => AtLeast ?? (AtMost is null ? null : Other);

    /// <summary>The largest value that is right; null where any is large enough.</summary>
    public double? Most => AtMost ?? (AtLeast is null ? null : Other);
}
