namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Signed gaps between the nodes of two solids. One class a pair of shapes.</summary>
public interface IGapKernel
{
    /// <summary>The gap between two nodes in the first solid's frame.</summary>
    /// <param name="firstNode">A node of the first solid.</param>
    /// <param name="secondNode">A node of the second solid.</param>
    /// <param name="secondInFirst">Pose of the second solid's body in the first's frame.</param>
    PieceGap Measure(int firstNode, int secondNode, in RigidMotion secondInFirst);
}
