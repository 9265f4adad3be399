using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>The catalogue of part kinds: a new kind is one line here.</summary>
public static class PartKinds
{
    public static ImmutableArray<PartKind> All { get; } =
    [
        new("brake-line", "a hard brake tube", ["line"], PartFormKind.Chain),
        new("fuel-line", "a hard fuel tube", ["line"], PartFormKind.Chain),
        new("exhaust-pipe", "an exhaust pipe", ["hot-exhaust"], PartFormKind.Chain),
        new("axle-tube", "the tube or housing of a solid axle", ["suspension"], PartFormKind.Chain),
        new("axle-bracket", "a bracket or mount on an axle, as a round bar", ["suspension"], PartFormKind.Chain),
        new("frame-tube", "a tube or rail of the frame, as a round bar", ["frame"], PartFormKind.Chain),
        new("brake-hose", "a flexible brake hose", ["hose"], PartFormKind.Hose),
        new("shock", "a shock absorber", ["suspension"], PartFormKind.Shock),
        new("bump-stop", "a bump stop", ["stop"], PartFormKind.BumpStop),
    ];

    /// <summary>All groups that a kind belongs to, in order of first use.</summary>
    public static ImmutableArray<string> Groups { get; } = [.. All.SelectMany(k => k.Groups).Distinct()];

    public static PartKind? Find(string id) => All.FirstOrDefault(k => k.Id == id);
}
