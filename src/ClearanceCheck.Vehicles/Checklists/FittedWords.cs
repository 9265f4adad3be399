using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What a vehicle may have that no part or point of the file tells.</summary>
public static class FittedWords
{
    /// <summary>Said alone: it has nothing of the kind.</summary>
    public const string None = "none";

    public static ImmutableArray<string> All { get; } =
    [
        "body-lift", "lift-block", "drop-bracket", "wheel-spacer", "pitman-arm", "adjuster-sleeve", "welded-bracket",
        "load-sensing-valve", "headlamp-leveling", "steering-angle-sensor", "driver-assist", None,
    ];
}
