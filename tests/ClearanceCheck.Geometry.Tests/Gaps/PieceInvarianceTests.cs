using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Tests.Scenes;

namespace ClearanceCheck.Geometry.Tests.Gaps;

/// <summary>What must not change a gap, to 1e-9 mm.</summary>
public sealed class PieceInvarianceTests
{
    private const int Pairs = 1000;

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Exchanging_the_pieces_keeps_the_gap(HullShape first, HullShape second)
    {
        foreach ((Hull a, Hull b) in HullScenes.Pairs(first, second, 901, Pairs))
        {
            PieceGap gap = Hull.Measure(a, b), swapped = Hull.Measure(b, a);

            swapped.Gap.ShouldBe(gap.Gap, 1e-9);
            // Where they are well apart the way between them is one.
            if (gap.Gap + a.Radius + b.Radius > 1e-2) GapAssert.Near(swapped.Direction, -gap.Direction, 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Moving_both_pieces_keeps_the_gap_and_turns_the_direction(HullShape first, HullShape second)
    {
        var g = new SplitMix64(902);
        foreach ((Hull a, Hull b) in HullScenes.Pairs(first, second, 903, Pairs))
        {
            RigidMotion motion = g.Motion(1000);
            PieceGap gap = Hull.Measure(a, b), moved = Hull.Measure(a.With(motion.Apply), b.With(motion.Apply));

            moved.Gap.ShouldBe(gap.Gap, 1e-9);
            if (gap.Gap + a.Radius + b.Radius > 1e-2) GapAssert.Near(moved.Direction, motion.ApplyToDirection(gap.Direction), 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(HullKinds.All), MemberType = typeof(HullKinds))]
    public void Left_and_right_exchanged_keep_the_gap(HullShape first, HullShape second)
    {
        foreach ((Hull a, Hull b) in HullScenes.Pairs(first, second, 904, Pairs))
            Hull.Measure(a.With(Mirror), b.With(Mirror)).Gap.ShouldBe(Hull.Measure(a, b).Gap, 1e-9);
    }

    private static Vector3d Mirror(Vector3d v) => v with { Y = -v.Y };
}
