using System.Collections.Immutable;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Quantities.Shapes;

/// <summary>One piece of a part's shape with what carries it: most parts have one, a shock has its tube and its rod.</summary>
/// <param name="Bodies">Names of the bodies that carry it.</param>
/// <param name="Swept">The solid, with the bodies' numbers in their module.</param>
public sealed record ShapeMember(ImmutableArray<string> Bodies, SweptSolid Swept);
