using System.Buffers.Binary;
using System.Globalization;

namespace ClearanceCheck.Benchmarks;

/// <summary>A scan of a million triangles, read, put into a tree and asked for closest points by us and by CGAL in turn.</summary>
internal static class ScanComparison
{
    private const ulong Seed = 20_250_311;
    private const int Points = 10_000;
    private const int Rounds = 3;

    // How far two right answers may be apart, as a share of the distance or of a millimetre: roundings of two different formulas.
    private const double MostDifference = 1e-9;

    public static int Run()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("clearance-benchmark-");
        try
        {
            return Run(folder.FullName);
        }
        finally
        {
            folder.Delete(true);
        }
    }

    private static int Run(string folder)
    {
        string? peer = PeerProgram.Compile(folder);
        if (peer is null) return Program.Unusable;
        string mesh = Path.Combine(folder, "floor-pan.stl"), points = Path.Combine(folder, "points.bin");
        string ourDistances = Path.Combine(folder, "ours.bin"), theirDistances = Path.Combine(folder, "theirs.bin");
        var pan = new FloorPan(Seed);
        pan.WriteStl(mesh);
        pan.WritePointsBeside(points, Points);
        List<Figures> ours = [], theirs = [];
        for (int round = 0; round < Rounds; round++)
        {
            string? our = Command.Output(Environment.ProcessPath!, [.. SelfArguments(), OurClosestPoints.Role, mesh, points, ourDistances]);
            string? their = Command.Output(peer, mesh, points, theirDistances);
            if (our is null || their is null) return Program.Failed;
            ours.Add(Figures.Parse(our));
            theirs.Add(Figures.Parse(their));
        }

        Print(Figures.Median(ours), Figures.Median(theirs));
        return Compare(Distances(ourDistances), Distances(theirDistances));
    }

    // The process is the host where the program was started by `dotnet`, else the program itself.
    private static string[] SelfArguments() =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [Path.Combine(AppContext.BaseDirectory, "ClearanceCheck.Benchmarks.dll")] : [];

    private static void Print(Figures ours, Figures theirs)
    {
        Line($"A floor pan of {FloorPan.Triangles} triangles in binary STL, {Points} points 5 to 300 mm beside it; one thread, median of {Rounds} runs in turn.");
        Line($"{"",-28}{"ClearanceCheck",16}{"CGAL",16}");
        Row("read the file, ms", ours.ReadMs, theirs.ReadMs);
        Row("build the tree, ms", ours.BuildMs, theirs.BuildMs);
        Row("closest point, ns/query", ours.QueryNs, theirs.QueryNs);
        Row("peak memory, MB", ours.PeakMb, theirs.PeakMb);
    }

    private static int Compare(double[] ours, double[] theirs)
    {
        double most = 0;
        for (int i = 0; i < ours.Length; i++)
        {
            double difference = Math.Abs(ours[i] - theirs[i]) / Math.Max(1, theirs[i]);
            // A difference that is no number is the largest there is.
            if (!(difference <= most)) most = double.IsNaN(difference) ? double.PositiveInfinity : difference;
        }

        Line($"{ours.Length} distances of {theirs.Min():F1} to {theirs.Max():F1} mm; largest difference {most:E1} of the distance or of 1 mm, {MostDifference:E0} allowed.");
        if (ours.Length == Points && theirs.Length == Points && most <= MostDifference) return 0;
        Console.Error.WriteLine("The distances differ: one of the two is wrong.");
        return Program.Failed;
    }

    private static double[] Distances(string file)
    {
        byte[] bytes = File.ReadAllBytes(file);
        double[] distances = new double[bytes.Length / 8];
        for (int i = 0; i < distances.Length; i++) distances[i] = BinaryPrimitives.ReadDoubleLittleEndian(bytes.AsSpan(8 * i));
        return distances;
    }

    private static void Row(string name, double ours, double theirs) => Line($"{name,-28}{ours,16:F0}{theirs,16:F0}");

    private static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
