using System.CommandLine;
using System.Globalization;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>The options of every command that reads rules.</summary>
internal sealed record RulesOptions(Option<string[]> Folders, Option<DateOnly?> Today)
{
    public static RulesOptions Create() => new(
        new Option<string[]>("--rules")
        {
            Description = "A folder with rules (*.yaml): a library instead of that which the program carries, or a shop's overlay on it. May be given several times; each overlay after what it stands on.",
            HelpName = "DIR",
            AllowMultipleArgumentsPerToken = false,
        },
        new Option<DateOnly?>("--today")
        {
            Description = "The day of the inspection, as 2031-04-02, for what counts up to a last day. Without it, the day of this machine's clock.",
            HelpName = "DAY",
            CustomParser = result =>
            {
                if (DateOnly.TryParseExact(result.Tokens[0].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)) return day;
                result.AddError("--today takes a day written year-month-day, such as 2031-04-02.");
                return null;
            },
        });

    public void AddTo(Command command)
    {
        command.Add(Folders);
        command.Add(Today);
    }
}
