namespace ClearanceCheck.Quantities.Sets;

/// <summary>The poses over which a quantity's worst value is looked for.</summary>
public enum PoseSet
{
    /// <summary>Every pose that can be reached.</summary>
    AllPoses,

    /// <summary>At least one wheel of the axle on a droop stop, the other anywhere, any steering.</summary>
    Droop,

    /// <summary>At least one wheel of the axle on a bump stop, the other anywhere, any steering.</summary>
    Bump,

    /// <summary>Both wheels on droop stops at once, any steering.</summary>
    FullDroop,

    /// <summary>Both wheels on bump stops at once, any steering.</summary>
    FullBump,

    /// <summary>One wheel on a bump stop and the other on a droop stop, any steering.</summary>
    Articulated,

    /// <summary>Both wheels at ride height, any steering, not wound up.</summary>
    RideHeight,
}
