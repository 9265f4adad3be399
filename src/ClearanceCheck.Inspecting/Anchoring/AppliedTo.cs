using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Anchoring;

/// <summary>The two parts of a pair in the rule's order.</summary>
internal readonly record struct AppliedTo(Part First, Part Second);
