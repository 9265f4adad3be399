using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Quantities;
using ClearanceCheck.Reporting;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>schema</c>: the JSON Schema of what the program writes, and of rule files.</summary>
internal static class SchemaCommand
{
    private const string Suffix = ".schema.json";

    public static Command Create(Door door)
    {
        ImmutableSortedDictionary<string, string> all = All();
        var of = new Option<string>("--of") { Description = "Of what: " + string.Join(", ", all.Keys) + ".", HelpName = "NAME", Required = true };
        of.AcceptOnlyFromAmong([.. all.Keys]);
        var command = new Command("schema", "Prints the JSON Schema of a machine output, or of rule files.") { of };
        command.SetAction(p =>
        {
            door.Output.Write(all[p.GetRequiredValue(of)]);
            return ExitStatus.Nothing;
        });
        return command;
    }

    private static ImmutableSortedDictionary<string, string> All()
    {
        var all = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (string name in Schemas.Names) all[name] = Schemas.Of(name)!;
        foreach (StoredFile file in EmbeddedFiles.Below("schemas/")) all[file.Name[..^Suffix.Length]] = Encoding.UTF8.GetString(file.Content.AsSpan());
        all["rules"] = RuleSchema.Write(QuantityCatalogue.Standard);
        return all.ToImmutable();
    }
}
