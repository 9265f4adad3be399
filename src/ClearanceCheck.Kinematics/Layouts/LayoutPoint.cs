namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A point a layout needs.</summary>
/// <param name="Name">The word in files.</param>
/// <param name="Where">The sentence that tells a person where it is.</param>
public sealed record LayoutPoint(string Name, string Where);
