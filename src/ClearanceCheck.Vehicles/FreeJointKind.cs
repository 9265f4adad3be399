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

    /// <summary>One body slides along the other: a rack.</summary>
    Slide,

    /// <summary>A rod that gives along its length.</summary>
    Spring,

    /// <summary>A bushing that gives in all directions.</summary>
    Bushing,
}
