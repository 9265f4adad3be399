using System.Globalization;
using System.Text;
using Serilog;
using Serilog.Events;
using Serilog.Sinks.SystemConsole.Themes;

namespace ClearanceCheck.Cli;

/// <summary>The door of the running process.</summary>
internal static class ProcessDoor
{
    private const string LogLine = "{Level:u3}: {Message:lj}{NewLine}{Exception}";

    public static Door Open()
    {
        var utf8 = new UTF8Encoding(false);
        Console.OutputEncoding = utf8;
        return new Door(logs => logs.WriteTo.Console(
            outputTemplate: LogLine,
            formatProvider: CultureInfo.InvariantCulture,
            standardErrorFromLevel: LogEventLevel.Verbose,
            theme: ConsoleTheme.None))
        {
            Output = Writer(Console.OpenStandardOutput(), utf8),
            Error = Writer(Console.OpenStandardError(), utf8),
            Input = Console.OpenStandardInput,
            WorkingFolder = Environment.CurrentDirectory,
            TempFolder = Path.GetTempPath(),
            Today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
            ColoursOutput = !Console.IsOutputRedirected && AllowsColour(),
            ShowsProgress = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    private static bool AllowsColour() =>
        string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb";

    private static StreamWriter Writer(Stream stream, Encoding encoding) => new(stream, encoding) { AutoFlush = true, NewLine = "\n" };
}
