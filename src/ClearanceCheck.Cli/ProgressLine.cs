using System.Globalization;

namespace ClearanceCheck.Cli;

/// <summary>One line on a terminal that counts measurements; nothing at all elsewhere.</summary>
internal sealed class ProgressLine(Door door) : IProgress<(int Done, int Of)>, IDisposable
{
    private readonly Lock gate = new();
    private int most;
    private int width;

    public void Report((int Done, int Of) value)
    {
        if (!door.ShowsProgress) return;
        lock (gate)
        {
            // Threads may report out of order.
            if (value.Done <= most) return;
            most = value.Done;
            string line = string.Create(CultureInfo.InvariantCulture, $"measured {value.Done} of {value.Of}");
            width = Math.Max(width, line.Length);
            door.Error.Write("\r" + line.PadRight(width));
        }
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        if (width > 0) door.Error.Write("\r" + new string(' ', width) + "\r");
    }
}
