using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A part of a proved block with the enclosed motion over it.</summary>
/// <param name="Settings">Its range in each coordinate.</param>
/// <param name="Jets">For each coordinate, for each body of the linkage, without followers.</param>
internal sealed record ProvedPart(Interval[] Settings, MotionJet<Interval>[][] Jets);
