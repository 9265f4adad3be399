namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Why bodies and joints make no linkage that the settings move in one way only.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Names">The bodies or joints concerned, in order.</param>
public sealed record LinkageFault(LinkageFaultKind Kind, IReadOnlyList<string> Names);
