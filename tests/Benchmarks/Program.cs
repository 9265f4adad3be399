namespace ClearanceCheck.Benchmarks;

/// <summary>Speed of the geometry, beside a public library where there is one: <c>scan</c> or <c>kernels</c>.</summary>
internal static class Program
{
    public const int Failed = 1;
    public const int Unusable = 2;

    private static int Main(string[] args) => args switch
    {
        ["scan"] => ScanComparison.Run(),
        ["kernels"] => KernelTimes.Run(),
        // How the comparison starts its own half, so that its memory is its own.
        [OurClosestPoints.Role, var mesh, var points, var distances] => OurClosestPoints.Run(mesh, points, distances),
        _ => Usage(),
    };

    private static int Usage()
    {
        Console.Error.WriteLine("Type one of: scan (a mesh of a million triangles, beside CGAL's tree of boxes), kernels (nanoseconds for a pair of pieces).");
        return Unusable;
    }
}
