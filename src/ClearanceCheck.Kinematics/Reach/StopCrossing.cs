namespace ClearanceCheck.Kinematics.Reach;

/// <summary>Where a stop ends a straight path from ride height.</summary>
/// <param name="Stop">The stop's name.</param>
/// <param name="At">How far along the path its reserve crosses zero, mm of each wheel that moves, or rad of steering; zero when ride height already lies beyond it.</param>
/// <param name="BeyondAtRideMm">By how much ride height lies beyond it, mm; zero for a stop that ride height does not pass.</param>
public readonly record struct StopCrossing(string Stop, double At, double BeyondAtRideMm);
