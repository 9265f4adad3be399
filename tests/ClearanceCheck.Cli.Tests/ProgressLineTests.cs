namespace ClearanceCheck.Cli.Tests;

public sealed class ProgressLineTests
{
    [Fact]
    public void On_a_terminal_one_line_counts_and_is_wiped()
    {
        Write(isTerminal: true).ShouldBe("\rmeasured 1 of 12\rmeasured 3 of 12\r                \r");
    }

    [Fact]
    public void Elsewhere_nothing_is_written() => Write(isTerminal: false).ShouldBeEmpty();

    private static string Write(bool isTerminal)
    {
        using var error = new StringWriter();
        using var door = new Door(logs => logs) { Output = TextWriter.Null, Error = error, Input = () => Stream.Null, WorkingFolder = "/", TempFolder = "/", Today = default, ShowsProgress = isTerminal };
        using (var progress = new ProgressLine(door))
        {
            progress.Report((1, 12));
            progress.Report((3, 12));
            // Another thread was later to tell.
            progress.Report((2, 12));
        }

        return error.ToString();
    }
}
