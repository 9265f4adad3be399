using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Disc against chain: <see cref="DiscCapsule"/> on the chain's nodes.</summary>
public sealed class DiscChainKernel(Disc first, CapsuleChain second) : IGapKernel
{
    public PieceGap Measure(int firstNode, int secondNode, in RigidMotion secondInFirst) =>
        DiscCapsule.Measure(first, second.Piece(secondNode).Moved(secondInFirst));
}
