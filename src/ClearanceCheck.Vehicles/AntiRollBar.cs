namespace ClearanceCheck.Vehicles;

/// <summary>An axle's anti-roll bar while it is connected: two arms that turn about one line and are twisted against each other.</summary>
/// <param name="IsOnAxle">True for a bar that is held on the axle and linked to the frame; false the other way round.</param>
public sealed record AntiRollBar(bool IsOnAxle);
