using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>All steering linkages by their word in files: a new one is one class and one line here.</summary>
public static class SteeringCatalogue
{
    public static ImmutableArray<SteeringLinkage> All { get; } =
        [new CrossOverSteering(), new InvertedYSteering(), new ParallelSteering(), new RackSteering(), new LockOnlySteering()];

    /// <summary>Their words: all of them go with knuckles that turn on kingpins.</summary>
    public static ImmutableArray<string> Ids => [.. All.Select(s => s.Id)];

    public static SteeringLinkage? Find(string id) => All.FirstOrDefault(s => s.Id == id);
}
