using System.Collections.Immutable;
using System.CommandLine;

namespace ClearanceCheck.Cli.Commands;

/// <summary>What an inspection writes: <c>html</c>, <c>json</c> or both.</summary>
internal static class ReportFormats
{
    public const string Html = "html";
    public const string Json = "json";

    public static ImmutableArray<string> All { get; } = [Html, Json];

    public static Option<ImmutableArray<string>> CreateOption() => new("--format")
    {
        Description = "What to write: html, json or html,json.",
        HelpName = "html,json",
        DefaultValueFactory = _ => All,
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result =>
        {
            string typed = result.Tokens[0].Value;
            ImmutableArray<string> formats = [.. typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct()];
            if (formats.IsEmpty || formats.Any(f => !All.Contains(f))) result.AddError($"--format takes {string.Join(", ", All)} or both with a comma between.");
            return formats;
        },
    };
}
