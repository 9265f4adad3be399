namespace ClearanceCheck.Kinematics.Reach;

/// <summary>What can hold an extreme pose.</summary>
public enum PoseHoldKind
{
    /// <summary>A stop with a place and a length.</summary>
    Stop,

    /// <summary>The typed end of the travel looked at: the wheel may go on.</summary>
    EndOfTravel,

    /// <summary>The end of the steering's range: the lock.</summary>
    Lock,

    /// <summary>The end of another coordinate's range.</summary>
    EndOfRange,

    /// <summary>No stop and no end: the motion could not be solved beyond.</summary>
    Links,
}
