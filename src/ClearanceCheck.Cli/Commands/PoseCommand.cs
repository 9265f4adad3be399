using System.CommandLine;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Poses;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>pose</c>: where every point, wheel and part is in one pose.</summary>
internal static class PoseCommand
{
    public static Command Create(Door door)
    {
        Argument<string> file = FileArgument.Create();
        var at = new Option<string?>("--at") { Description = "Wheel travel from ride height, bump positive, and steering, left positive: rear.left=80mm,front.steer=20deg; or a pose by name: rear=full-droop. What is not typed is 0.", HelpName = "POSE" };
        Option<string> format = TextOrJson.Create();
        var command = new Command("pose", "Shows where every point, wheel and part is in one pose.") { file, at, format };
        command.SetAction(p => Run(door, p.GetRequiredValue(file), p.GetValue(at), p.GetValue(format) == TextOrJson.Json));
        return command;
    }

    private static int Run(Door door, string file, string? at, bool json)
    {
        if (LoadedInspection.Load(file, door)?.Move(door) is not { } motion) return ExitStatus.UnusableInput;
        (PoseTyped? typed, IReadOnlyList<InputFault> faults) = PoseTyped.Read(at, motion);
        if (typed is null) return InputFault.Print(door, faults);
        VehiclePose pose = VehiclePose.Of(motion, typed);
        door.Output.Write(json ? PoseJson.Write(pose) : PoseTable.Write(pose));
        return ExitStatus.Nothing;
    }
}
