using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>All steering linkages by their word in files: a new one is one class and one line here.</summary>
public static class SteeringCatalogue
{
    public static ImmutableArray<SteeringLinkage> All { get; } =
        [new CrossOverSteering(), new InvertedYSteering(), new ParallelSteering(), new RackSteering(), new LockOnlySteering()];

    public static SteeringLinkage? Find(string id) => All.FirstOrDefault(s => s.Id == id);
}
