using System.Collections.Immutable;
using System.CommandLine;

namespace ClearanceCheck.Cli.Commands;

/// <summary>What an inspection writes: <c>html</c>, <c>json</c>, <c>csv</c>, or several of these.</summary>
internal static class ReportFormats
{
    public const string Html = "html";
    public const string Json = "json";

    public const string Csv = "csv";

    public static ImmutableArray<string> All { get; } = [Html, Json, Csv];

    /// <summary>What is written when nobody says otherwise.</summary>
    public static ImmutableArray<string> Usual { get; } = [Html, Json];

    public static Option<string> CreateOption()
    {
        var option = new Option<string>("--format") { Description = "What to write: html, json, csv (the travel tables), or several of these.", HelpName = "html,json,csv", DefaultValueFactory = _ => string.Join(',', Usual) };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string>() is not { } typed || Parse(typed) is { IsEmpty: true } || Parse(typed).Any(f => !All.Contains(f)))
                result.AddError($"--format takes {string.Join(", ", All)} or several of these with commas between.");
        });
        return option;
    }

    public static ImmutableArray<string> Parse(string typed) => [.. typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct()];
}
