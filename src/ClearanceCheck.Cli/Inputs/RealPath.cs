namespace ClearanceCheck.Cli.Inputs;

/// <summary>Where a path really leads, every link on the way followed.</summary>
internal static class RealPath
{
    private const int MostLinks = 40;

    /// <summary>The path without links.</summary>
    /// <param name="path">A whole path; what does not exist is taken as it stands.</param>
    /// <exception cref="IOException">Too many links: they lead in a circle.</exception>
    public static string Of(string path)
    {
        string root = Path.GetPathRoot(path)!, real = root;
        var steps = new Stack<string>(Steps(path[root.Length..]));
        int links = 0;
        while (steps.TryPop(out string? step))
        {
            string next = Path.GetFullPath(Path.Combine(real, step));
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }

            if (++links > MostLinks) throw new IOException("Links lead in a circle.");
            if (Path.IsPathRooted(target)) real = Path.GetPathRoot(target)!;
            foreach (string further in Steps(target[(Path.IsPathRooted(target) ? Path.GetPathRoot(target)!.Length : 0)..])) steps.Push(further);
        }

        return real;
    }

    /// <summary>Whether a path without links lies below a folder without links.</summary>
    public static bool IsBelow(string path, string folder) =>
        path.StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    // The last step first, as a stack takes them.
    private static IEnumerable<string> Steps(string path) =>
        path.Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries).Reverse();
}
