using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The kernel for each pair of shapes.</summary>
public static class GapKernels
{
    /// <exception cref="NotSupportedException">The pair has no kernel: two discs.</exception>
    public static IGapKernel For(Solid first, Solid second) => (first, second) switch
    {
        (CapsuleChain a, CapsuleChain b) => new ChainChainKernel(a, b),
        (Disc a, CapsuleChain b) => new DiscChainKernel(a, b),
        (CapsuleChain a, Disc b) => new SwappedKernel(new DiscChainKernel(b, a)),
        _ => throw new NotSupportedException($"No gap kernel for {first.GetType().Name} against {second.GetType().Name}."),
    };
}
