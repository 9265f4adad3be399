using System.Collections.Immutable;
using System.Diagnostics;

namespace ClearanceCheck.Quantities.Sets;

/// <summary>Pose sets by their words in rules and commands, and in sentences.</summary>
public static class PoseSetWords
{
    public static ImmutableSortedDictionary<string, PoseSet> Sets { get; } =
        Enum.GetValues<PoseSet>().ToImmutableSortedDictionary(Word, set => set, StringComparer.Ordinal);

    /// <summary>The word in rules: <c>full-droop</c>.</summary>
    public static string Word(PoseSet set) => set switch
    {
        PoseSet.AllPoses => "all-poses",
        PoseSet.Droop => "droop",
        PoseSet.Bump => "bump",
        PoseSet.FullDroop => "full-droop",
        PoseSet.FullBump => "full-bump",
        PoseSet.Articulated => "articulated",
        PoseSet.RideHeight => "ride-height",
        _ => throw new UnreachableException(),
    };

    /// <summary>What is looked at, as the end of a sentence: "in every pose that can be reached".</summary>
    public static string Where(PoseSet set) => set switch
    {
        PoseSet.AllPoses => "in every pose that can be reached",
        PoseSet.Droop => "with at least one wheel of the axle on its droop stop, the other anywhere, lock to lock",
        PoseSet.Bump => "with at least one wheel of the axle on its bump stop, the other anywhere, lock to lock",
        PoseSet.FullDroop => "with both wheels of the axle on their droop stops, lock to lock",
        PoseSet.FullBump => "with both wheels of the axle on their bump stops, lock to lock",
        PoseSet.Articulated => "with one wheel of the axle on its bump stop and the other on its droop stop, lock to lock",
        PoseSet.RideHeight => "with both wheels at ride height, lock to lock",
        _ => throw new UnreachableException(),
    };
}
