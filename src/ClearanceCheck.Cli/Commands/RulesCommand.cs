using System.CommandLine;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Rulebook;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>rules</c>: what the rules are, where each field comes from, whether a shop's files are right, and whether their examples pin them.</summary>
internal static class RulesCommand
{
    public static Command Create(Door door) => new("rules", "Looks at rules: list, show, check, test, try.") { List(door), Show(door), Check(door), Test(door), TryCommand.Create(door) };

    private static Command List(Door door)
    {
        var command = new Command("list", "Prints the rules that count, one a line.");
        RulesOptions options = RulesOptions.Create();
        options.AddTo(command);
        command.SetAction(p =>
        {
            if (Load(p, options, door) is not { } library) return ExitStatus.UnusableInput;
            door.Output.Write(RuleTable.Write(library, QuantityCatalogue.Standard));
            return Status(library);
        });
        return command;
    }

    private static Command Show(Door door)
    {
        var id = new Argument<string>("ID") { Description = "The rule's id, as in the report." };
        var command = new Command("show", "Prints a rule as it counts, with the file and line that each field comes from.") { id };
        RulesOptions options = RulesOptions.Create();
        options.AddTo(command);
        command.SetAction(p =>
        {
            if (Load(p, options, door) is not { } library) return ExitStatus.UnusableInput;
            (string? text, InputFault? fault) = RuleText.Write(library, p.GetRequiredValue(id));
            if (text is null) return InputFault.Print(door, fault!);
            door.Output.Write(text);
            return Status(library);
        });
        return command;
    }

    private static Command Check(Door door) => OfFolders("check", "Loads rules and says what is wrong with them.", door, (library, _) =>
    {
        door.Output.Write(RuleCount.Write(library));
        return Status(library);
    });

    private static Command Test(Door door) => OfFolders("test", "Runs the examples of rules, and says what of the rules they leave open.", door, (library, _) =>
    {
        (string text, bool isPinned) = ExampleReport.Write(library);
        door.Output.Write(text);
        return isPinned ? Status(library) : ExitStatus.Findings;
    });

    private static Command OfFolders(string name, string what, Door door, Func<RuleLibrary, ParseResult, int> run)
    {
        var folders = new Argument<string[]>("DIR") { Description = "Folders of rules, in layers; none for the rules that the program carries.", Arity = ArgumentArity.ZeroOrMore };
        var command = new Command(name, what) { folders };
        RulesOptions options = RulesOptions.Create();
        command.Add(options.Today);
        command.SetAction(p => RulesSource.Load(p.GetValue(folders) ?? [], p.GetValue(options.Today) ?? door.Today, QuantityCatalogue.Standard, door) is { } library
            ? run(library, p)
            : ExitStatus.UnusableInput);
        return command;
    }

    private static RuleLibrary? Load(ParseResult parsed, RulesOptions options, Door door) =>
        RulesSource.Load(parsed.GetValue(options.Folders) ?? [], parsed.GetValue(options.Today) ?? door.Today, QuantityCatalogue.Standard, door);

    // A rule that is not loaded fails the run, as it does an inspection.
    private static int Status(RuleLibrary library) => library.NotLoaded.IsEmpty ? ExitStatus.Nothing : ExitStatus.Findings;
}
