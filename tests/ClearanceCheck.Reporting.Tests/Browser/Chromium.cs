namespace ClearanceCheck.Reporting.Tests.Browser;

/// <summary>Where the system's Chromium is: the variable CHROMIUM, else the search path.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "chrome.exe", "msedge.exe"];

    /// <exception cref="InvalidOperationException">There is none: says what to install, since a check of the report must not be skipped.</exception>
    public static string Find(Func<string, string?> variable)
    {
        if (variable("CHROMIUM") is { Length: > 0 } named)
            return File.Exists(named) ? named : throw new InvalidOperationException($"CHROMIUM names '{named}', which is no file. Point it to a Chromium program.");
        return (variable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("No Chromium found. Install it (Debian: apt-get install -y chromium fonts-dejavu-core) or set CHROMIUM to its program file.");
    }
}
