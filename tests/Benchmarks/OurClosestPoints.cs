using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Scans;
using ClearanceCheck.Units;

namespace ClearanceCheck.Benchmarks;

/// <summary>Our half of the comparison, in a process of its own: reads the mesh, builds the tree, asks for every point's distance.</summary>
internal static class OurClosestPoints
{
    public const string Role = "our-closest-points";

    // The first pass warms the compiler up, as the peer's was warm from the start.
    private const int Passes = 5;

    public static int Run(string meshFile, string pointsFile, string distancesFile)
    {
        Vector3d[] points = Points(pointsFile);
        var clock = Stopwatch.StartNew();
        Scan? scan = Read(meshFile);
        if (scan is null) return Program.Failed;
        double readMs = clock.Elapsed.TotalMilliseconds;
        clock.Restart();
        SimplexTree tree = Tree(scan);
        double buildMs = clock.Elapsed.TotalMilliseconds;
        var closest = new ClosestPoint(tree);
        double[] distances = new double[points.Length];
        var passes = new List<double>();
        for (int pass = 0; pass < Passes; pass++)
        {
            clock.Restart();
            for (int i = 0; i < points.Length; i++) distances[i] = closest.Distance(points[i]);
            passes.Add(clock.Elapsed.TotalNanoseconds / points.Length);
        }

        WriteDistances(distancesFile, distances);
        using Process self = Process.GetCurrentProcess();
        Console.WriteLine(new Figures(readMs, buildMs, Figures.Middle(passes), self.PeakWorkingSet64 / (1024.0 * 1024)).ToLine());
        return 0;
    }

    private static Scan? Read(string file)
    {
        var claims = new ScanClaims(LengthUnit.Millimetre, ScanAxis.PlusZ, ScanAxis.PlusX, [new ScanSize(ScanSide.X, FloorPan.LengthMm, 1)]);
        var diagnostics = new DiagnosticBag();
        SourceSpan at = new SourceText("benchmark", "").Span(0, 0);
        Scan? scan = ScanReader.Read(Path.GetFileName(file), File.ReadAllBytes(file), claims, _ => null, at, diagnostics);
        if (diagnostics.Count > 0) Console.Error.Write(DiagnosticRenderer.Render(diagnostics));
        return scan;
    }

    private static SimplexTree Tree(Scan scan)
    {
        ImmutableArray<Simplex>.Builder triangles = ImmutableArray.CreateBuilder<Simplex>(scan.TriangleCount);
        for (int i = 0; i < scan.TriangleCount; i++)
        {
            (int a, int b, int c) = scan.Triangle(i);
            triangles.Add(new Simplex(a, b, c, 0));
        }

        return new SimplexTree(scan.Points, triangles.MoveToImmutable());
    }

    private static Vector3d[] Points(string file)
    {
        byte[] bytes = File.ReadAllBytes(file);
        var points = new Vector3d[bytes.Length / 24];
        for (int i = 0; i < points.Length; i++)
            points[i] = new Vector3d(At(bytes, 3 * i), At(bytes, (3 * i) + 1), At(bytes, (3 * i) + 2));
        return points;
    }

    private static double At(byte[] bytes, int number) => BinaryPrimitives.ReadDoubleLittleEndian(bytes.AsSpan(8 * number));

    private static void WriteDistances(string file, double[] distances)
    {
        byte[] bytes = new byte[8 * distances.Length];
        for (int i = 0; i < distances.Length; i++) BinaryPrimitives.WriteDoubleLittleEndian(bytes.AsSpan(8 * i), distances[i]);
        File.WriteAllBytes(file, bytes);
    }
}
