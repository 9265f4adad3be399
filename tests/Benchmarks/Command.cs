using System.Diagnostics;

namespace ClearanceCheck.Benchmarks;

/// <summary>Runs other programs.</summary>
internal static class Command
{
    /// <summary>What a program printed; null, with its complaint passed on, where it failed.</summary>
    public static string? Output(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true };
        start.Environment["DEBIAN_FRONTEND"] = "noninteractive";
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode == 0) return output;
        Console.Error.WriteLine($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
        return null;
    }
}
