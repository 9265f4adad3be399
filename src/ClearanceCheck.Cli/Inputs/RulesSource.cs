using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>The rules of a run: those that the program carries, those of folders instead, or a shop's overlays on either.</summary>
internal static class RulesSource
{
    /// <summary>Loads rules; every fault goes to standard error, and a rule that is left out for one holds the vehicle.</summary>
    /// <param name="folders">Folders of rules, in layers; none for the rules that the program carries.</param>
    /// <param name="today">The day of the inspection.</param>
    /// <returns>Null when there are no rules to go by; it has been said why.</returns>
    public static RuleLibrary? Load(IReadOnlyList<string> folders, DateOnly today, QuantityCatalogue quantities, Door door)
    {
        var layers = new List<IReadOnlyList<RuleFile>>();
        foreach (string folder in folders)
        {
            (IReadOnlyList<RuleFile>? files, InputFault? fault) = Read(folder, door);
            if (files is null)
            {
                InputFault.Print(door, fault!);
                return null;
            }

            layers.Add(files);
        }

        (RuleLibrary? library, DiagnosticBag diagnostics) = RuleSetReader.Read(layers, [.. BaseLibrary.Files], quantities, today);
        if (diagnostics.Count > 0) door.Error.Write(DiagnosticRenderer.Render(diagnostics));
        if (library is not null) door.Log.Information("{Count} rules of {Library} {Version}", library.Rules.Length, library.Name, library.Version);
        return library;
    }

    private static (IReadOnlyList<RuleFile>? Files, InputFault? Fault) Read(string folder, Door door)
    {
        string path = door.Resolve(folder);
        try
        {
            if (!Directory.Exists(path)) return (null, new InputFault($"There is no folder {folder}.", "Name a folder with the shop's rules behind --rules."));
            string[] names = [.. Directory.EnumerateFiles(path, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
            return names.Length == 0
                ? (null, new InputFault($"There is no rule file (*.yaml) in {folder}.", "Without rules nothing would be checked; leave --rules out to use those that the program carries."))
                : ([.. names.Select(name => Read(path, name))], null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, new InputFault($"The rules in {folder} can't be read: {e.Message}", ""));
        }
    }

    private static RuleFile Read(string folder, string name)
    {
        using FileStream stream = File.OpenRead(Path.Combine(folder, name));
        return new RuleFile(name, StoredFile.Read(name, stream).Content.AsMemory());
    }
}
