namespace ClearanceCheck.Geometry.Gaps;

/// <summary>A kernel with its two solids exchanged: measured in the second's frame and carried back.</summary>
public sealed class SwappedKernel(IGapKernel inner) : IGapKernel
{
    public PieceGap Measure(int firstNode, int secondNode, in RigidMotion secondInFirst)
    {
        PieceGap gap = inner.Measure(secondNode, firstNode, secondInFirst.Inverse);
        return new PieceGap(
            gap.Gap,
            -secondInFirst.ApplyToDirection(gap.Direction),
            secondInFirst.Apply(gap.OnSecond),
            secondInFirst.Apply(gap.OnFirst));
    }
}
