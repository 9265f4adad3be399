namespace ClearanceCheck.Kinematics.Reach;

/// <summary>What holds an extreme pose: a stop, an end of a coordinate's range, or the links.</summary>
/// <param name="Kind">Which of these.</param>
/// <param name="Name">The stop's name, or what the end is called.</param>
/// <param name="ReserveMm">What is left before the stop, mm; zero for the other kinds.</param>
public readonly record struct PoseHold(PoseHoldKind Kind, string Name, double ReserveMm);
