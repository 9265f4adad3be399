namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What a body can do against the body that carries it.</summary>
internal enum CarriageKind
{
    /// <summary>It is the chassis and does not move.</summary>
    Chassis,

    /// <summary>Its place is known: another linkage has been solved for it.</summary>
    Driven,

    /// <summary>It moves freely; its joints are equations.</summary>
    Free,

    /// <summary>It turns about a line of its parent.</summary>
    Turning,

    /// <summary>It slides along a line of its parent.</summary>
    Sliding,
}
