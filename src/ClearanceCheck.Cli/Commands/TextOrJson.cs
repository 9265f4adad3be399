using System.CommandLine;

namespace ClearanceCheck.Cli.Commands;

/// <summary>The option that chooses between text for people and machine output.</summary>
internal static class TextOrJson
{
    public const string Json = "json";

    public static Option<string> Create()
    {
        var option = new Option<string>("--format") { Description = "text or json.", HelpName = "text|json", DefaultValueFactory = _ => "text" };
        return option.AcceptOnlyFromAmong("text", Json);
    }
}
