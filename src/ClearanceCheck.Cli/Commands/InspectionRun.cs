using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Commands;

/// <summary>Reads an inspection file and rules, and inspects.</summary>
internal sealed class InspectionRun(Door door, string file)
{
    /// <summary>Folders of rules: a library instead of that which the program carries, overlays on it.</summary>
    public IReadOnlyList<string> RulesFolders { get; init; } = [];

    /// <summary>The day of the inspection; null for the door's.</summary>
    public DateOnly? Today { get; init; }

    public required int Threads { get; init; }

    /// <summary>The result; null when the input can't be used, and then it has been said why.</summary>
    public InspectionResult? Inspect()
    {
        RuleLibrary? library = RulesSource.Load(RulesFolders, Today ?? door.Today, QuantityCatalogue.Standard, door);
        LoadedInspection? loaded = LoadedInspection.Load(file, door, library?.Vocabulary);
        if (loaded is null || library is null) return null;
        return Inspect(loaded, library);
    }

    /// <summary>The result of a loaded inspection; null when an axle does not move, and then it has been said why.</summary>
    public InspectionResult? Inspect(LoadedInspection loaded, RuleLibrary library)
    {
        var request = new InspectionRequest
        {
            Vehicle = loaded.Vehicle,
            Library = library,
            ProgramVersion = ProgramVersion.Text,
            Inputs = loaded.Inputs,
            Today = Today ?? door.Today,
            Threads = Threads,
        };
        using var progress = new ProgressLine(door);
        (InspectionResult? result, string? axle, MotionFault? fault) = Inspector.Run(request, progress);
        if (result is null) loaded.Print(axle!, fault!, door);
        return result;
    }
}
