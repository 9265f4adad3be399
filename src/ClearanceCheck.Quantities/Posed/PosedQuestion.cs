using System.Collections.Immutable;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Posed;

/// <summary>One value of a quantity that changes with the pose: a joint of a shaft, one side of a reserve.</summary>
/// <param name="Module">What moves it; null when nothing does.</param>
/// <param name="Parts">The parts that it depends on.</param>
/// <param name="Value">In one pose, with any parameter values, in the quantity's unit.</param>
/// <param name="Search">Its worst value over a moving system, in the quantity's unit.</param>
internal sealed record PosedQuestion(AxleModule? Module, ImmutableArray<Part> Parts, Func<Snapshot, double> Value, Func<IMovingSystem, Extreme>? Search)
{
    /// <summary>What is held besides the pose set that was asked for.</summary>
    public PoseSubset? Held { get; init; }

    /// <summary>Set where the value belongs to one pose alone, by its nature.</summary>
    public ImmutableArray<double>? OnlyPose { get; init; }

    /// <summary>The pose set that it belongs to by its nature; null where it is the one that was asked for.</summary>
    public PoseSet? Over { get; init; }

    /// <summary>True for a value that has its least where it is best, such as an unevenness: it grows whichever way a reading errs there.</summary>
    public bool IsKinked { get; init; }

    /// <summary>Numbers it depends on beside those of its parts.</summary>
    public ImmutableArray<int> Also { get; init; } = [];
}
