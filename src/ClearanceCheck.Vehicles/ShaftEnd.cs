namespace ClearanceCheck.Vehicles;

/// <summary>The joint at an end of a shaft.</summary>
/// <param name="Joint">What kind.</param>
/// <param name="Ahead">A second point on the axis of the flange or output that the joint is bolted to; it rides on the end's body. Null where nobody measured it: the joint's angle is then not known.</param>
public sealed record ShaftEnd(ShaftJointKind Joint, MeasuredPoint? Ahead);
