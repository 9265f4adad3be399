using ClearanceCheck.Kinematics.Attitude;

namespace ClearanceCheck.Cli.Poses;

/// <summary>A wheel in a pose.</summary>
/// <param name="Name">Its corner: <c>rear.left</c>.</param>
/// <param name="TravelMm">From ride height, bump plus, mm.</param>
/// <param name="Attitude">How it stands.</param>
internal sealed record WheelPose(string Name, double TravelMm, WheelAttitude Attitude);
