using System.Globalization;
using Serilog.Core;
using Serilog.Events;

namespace ClearanceCheck.Cli.Tests;

/// <summary>Writes logs as lines to a writer.</summary>
internal sealed class WriterSink(TextWriter writer) : ILogEventSink
{
    public void Emit(LogEvent logEvent) => writer.WriteLine($"{logEvent.Level}: {logEvent.RenderMessage(CultureInfo.InvariantCulture)}");
}
