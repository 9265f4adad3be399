namespace ClearanceCheck.Benchmarks;

/// <summary>The peer: a small program of ours on CGAL's tree of boxes, compiled when it is needed.</summary>
internal static class PeerProgram
{
    private const string Source = "closest.cpp";
    private const string Header = "/usr/include/CGAL/AABB_tree.h";
    private const string Installer = "/usr/bin/apt-get";

    /// <summary>Compiles the peer into a folder; null, and said what to install, where that can't be done.</summary>
    public static string? Compile(string folder)
    {
        if (!IsThere() && !Install())
        {
            Console.Error.WriteLine("The comparison needs a C++ compiler and CGAL. Install them (Debian, as root: apt-get install -y g++ libcgal-dev) and run again.");
            return null;
        }

        string program = Path.Combine(folder, "closest");
        string source = Path.Combine(AppContext.BaseDirectory, "Peer", Source);
        return Command.Output("g++", "-O2", "-DNDEBUG", "-std=c++17", "-o", program, source, "-lgmp", "-lmpfr") is null ? null : program;
    }

    private static bool IsThere() => File.Exists(Header) && OnPath("g++");

    private static bool Install()
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess || !File.Exists(Installer)) return false;
        Console.WriteLine("No CGAL or no C++ compiler found: installing them.");
        Command.Output(Installer, "update");
        return Command.Output(Installer, "install", "-y", "g++", "libcgal-dev") is not null && IsThere();
    }

    private static bool OnPath(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries).Any(folder => File.Exists(Path.Combine(folder, name)));
}
