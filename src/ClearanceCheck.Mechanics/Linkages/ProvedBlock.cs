using System.Collections.Immutable;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A block of the pose box over which one continuous solution was proved.</summary>
/// <param name="Proof">The proof: of all bodies, or of those that others drive.</param>
/// <param name="Parts">Makes the parts that cover it, with the motion's bounds over each.</param>
internal sealed record ProvedBlock(Enclosure Proof, Func<ImmutableArray<ProvedPart>> Parts);
