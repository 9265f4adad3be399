using System.Xml.Linq;

namespace ClearanceCheck.House.Tests;

/// <summary>The files of the repository, found upward from the built tests or from where they are started.</summary>
internal static class Repository
{
    private const string Solution = "ClearanceCheck.sln";
    private static readonly string[] MadeFolders = ["bin", "obj", ".git", "artifacts", "TestResults", "BenchmarkDotNet.Artifacts", "node_modules", ".vs", ".idea", "clearance-report", "clearance-demo"];

    public static string Root { get; } = FindRoot();

    public static string SolutionText => File.ReadAllText(Path.Combine(Root, Solution));

    /// <summary>Paths from the root, forward strokes, of all files that are written by people; sorted.</summary>
    public static IReadOnlyList<string> Files { get; } = [.. Below(Root).Select(Relative).Order(StringComparer.Ordinal)];

    public static IEnumerable<string> Projects => Files.Where(f => f.EndsWith(".csproj", StringComparison.Ordinal));

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    public static XDocument ReadXml(string path) => XDocument.Load(Path.Combine(Root, path));

    private static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static IEnumerable<string> Below(string folder) =>
        Directory.EnumerateFiles(folder).Concat(
            Directory.EnumerateDirectories(folder).Where(d => !MadeFolders.Contains(Path.GetFileName(d))).SelectMany(Below));

    private static string FindRoot()
    {
        foreach (string start in new[] { AppContext.BaseDirectory, Environment.GetEnvironmentVariable("PWD") ?? Environment.CurrentDirectory })
            for (DirectoryInfo? folder = new(start); folder is not null; folder = folder.Parent)
                if (File.Exists(Path.Combine(folder.FullName, Solution))) return folder.FullName;
        throw new InvalidOperationException("Start the tests inside the repository.");
    }
}
