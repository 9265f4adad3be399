using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>Which axles are driven, in the words of <c>vehicle: { drive: ... }</c>.</summary>
public static class DriveWords
{
    public const string PartTime = "part-time", FullTime = "full-time", Rear = "rear", Front = "front";

    public static ImmutableArray<string> All { get; } = [PartTime, FullTime, Rear, Front];

    /// <summary>True unless the word says that only the other end drives. An axle of another name counts as driven.</summary>
    public static bool Drives(string? drive, string axle) => drive switch
    {
        Rear => axle != Front,
        Front => axle != Rear,
        _ => true,
    };
}
