using Serilog;
using Serilog.Core;
using Serilog.Events;

namespace ClearanceCheck.Cli;

/// <summary>Everything that commands need of the machine: where results and messages go, where relative paths start, the logs.</summary>
internal sealed class Door : IDisposable
{
    private readonly Logger logger;

    /// <summary>Opens a door.</summary>
    /// <param name="logs">Adds where logs are written to.</param>
    public Door(Func<LoggerConfiguration, LoggerConfiguration> logs) =>
        logger = logs(new LoggerConfiguration().MinimumLevel.ControlledBy(LogLevel)).CreateLogger();

    /// <summary>Results.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Messages and progress.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Opens standard input, which <c>-</c> stands for.</summary>
    public required Func<Stream> Input { get; init; }

    /// <summary>Where relative paths start.</summary>
    public required string WorkingFolder { get; init; }

    /// <summary>Where a log of a crash goes.</summary>
    public required string TempFolder { get; init; }

    /// <summary>The day, for what counts up to a last day; taken where nobody types one.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Results go to a terminal that shows colours.</summary>
    public bool ColoursOutput { get; init; }

    /// <summary>Messages go to a terminal, so that progress may be shown.</summary>
    public bool ShowsProgress { get; init; }

    public ILogger Log => logger;

    /// <summary>From which level on logs are written.</summary>
    public LoggingLevelSwitch LogLevel { get; } = new(LogEventLevel.Warning);

    /// <summary>A path as typed, made whole.</summary>
    public string Resolve(string path) => Path.GetFullPath(path, WorkingFolder);

    public void Dispose() => logger.Dispose();
}
