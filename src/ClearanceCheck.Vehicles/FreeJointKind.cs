namespace ClearanceCheck.Vehicles;

/// <summary>Kinds of joint that a free layout can spell out.</summary>
public enum FreeJointKind
{
    /// <summary>A rod of fixed length between a point of each body.</summary>
    Rod,

    /// <summary>A shared point.</summary>
    Ball,

    /// <summary>A shared line.</summary>
    Hinge,
}
