namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A point a layout or a steering linkage needs.</summary>
/// <param name="Name">The word in files.</param>
/// <param name="Where">The sentence that tells a person where it is.</param>
/// <param name="Body">The body it rides on, without the axle's name: <c>chassis</c>, <c>axle</c>, <c>knuckle-left</c>.</param>
public sealed record LayoutPoint(string Name, string Where, string Body)
{
    /// <summary>True for suspension points, which may be typed for one side and mirrored; steering is measured on both.</summary>
    public bool IsMirrorable { get; init; } = true;
}
