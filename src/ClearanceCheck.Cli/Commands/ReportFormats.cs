using System.Collections.Immutable;
using System.CommandLine;

namespace ClearanceCheck.Cli.Commands;

/// <summary>What an inspection writes: <c>html</c>, <c>json</c> or both.</summary>
internal static class ReportFormats
{
    public const string Html = "html";
    public const string Json = "json";

    public static ImmutableArray<string> All { get; } = [Html, Json];

    public static Option<string> CreateOption()
    {
        var option = new Option<string>("--format") { Description = "What to write: html, json or both.", HelpName = "html,json", DefaultValueFactory = _ => string.Join(',', All) };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string>() is not { } typed || Parse(typed) is { IsEmpty: true } || Parse(typed).Any(f => !All.Contains(f)))
                result.AddError($"--format takes {string.Join(", ", All)} or both with a comma between.");
        });
        return option;
    }

    public static ImmutableArray<string> Parse(string typed) => [.. typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct()];
}
