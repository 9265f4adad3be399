namespace ClearanceCheck.Inspecting.Trying;

/// <summary>Something that other rules judge otherwise.</summary>
/// <param name="Id">Of the finding, the item or the place that is expected to be filled.</param>
/// <param name="Before">Null where it was not asked.</param>
/// <param name="After">Null where it is no longer asked.</param>
public sealed record Flip(FlipKind Kind, string Id, string Title, JudgedAs? Before, JudgedAs? After);
