using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Chain against chain: <see cref="CapsuleCapsule"/> on the nodes' capsules.</summary>
public sealed class ChainChainKernel(CapsuleChain first, CapsuleChain second) : IGapKernel
{
    public PieceGap Measure(int firstNode, int secondNode, in RigidMotion secondInFirst) =>
        CapsuleCapsule.Measure(first.Piece(firstNode), second.Piece(secondNode).Moved(secondInFirst));
}
