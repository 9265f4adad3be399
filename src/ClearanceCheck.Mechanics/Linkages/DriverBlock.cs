using System.Collections.Immutable;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What is known of driving bodies over a block, in the whole's numbers.</summary>
/// <param name="Centre">At the block's centre, as solved.</param>
/// <param name="Over">Over the whole block, enclosed.</param>
/// <param name="Parts">Over each of its parts, with the part's range in the driver's coordinates.</param>
internal sealed record DriverBlock(DrivenJets<Real> Centre, DrivenJets<Interval> Over, ImmutableArray<(Interval[] Settings, DrivenJets<Interval> Jets)> Parts);
