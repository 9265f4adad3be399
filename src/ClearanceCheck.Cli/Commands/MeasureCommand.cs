using System.Collections.Immutable;
using System.CommandLine;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Measuring;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;

namespace ClearanceCheck.Cli.Commands;

/// <summary><c>measure</c>: one quantity without any rule.</summary>
internal static class MeasureCommand
{
    public static Command Create(Door door)
    {
        Argument<string> file = FileArgument.Create();
        var quantity = new Option<string>("--quantity") { Description = "What to measure: " + string.Join(", ", QuantityCatalogue.Standard.All.Select(q => q.Id)) + ".", HelpName = "QUANTITY", DefaultValueFactory = _ => "gap" };
        var first = new Option<string?>("--first") { Description = "The part, or the first of a pair; without it the worst of the vehicle are listed.", HelpName = "PART" };
        var second = new Option<string?>("--second") { Description = "The second part of a pair.", HelpName = "PART" };
        var at = new Option<string?>("--at") { Description = "Only in this pose: rear.left=80mm,rear.right=-60mm.", HelpName = "POSE" };
        var over = new Option<string>("--over") { Description = "Over which poses: " + string.Join(", ", PoseSetWords.Sets.Keys) + ".", HelpName = "POSES", DefaultValueFactory = _ => PoseSetWords.Word(PoseSet.AllPoses) };
        over.AcceptOnlyFromAmong([.. PoseSetWords.Sets.Keys]);
        Option<string> format = TextOrJson.Create();
        var command = new Command("measure", "Measures one quantity without any rule.") { file, quantity, first, second, at, over, format };
        command.SetAction(p => Run(
            door, p.GetRequiredValue(file), (p.GetRequiredValue(quantity), p.GetValue(first), p.GetValue(second)), p.GetValue(at), PoseSetWords.Sets[p.GetRequiredValue(over)], p.GetValue(format) == TextOrJson.Json));
        return command;
    }

    private static int Run(Door door, string file, (string Quantity, string? First, string? Second) typed, string? at, PoseSet over, bool json)
    {
        if (LoadedInspection.Load(file, door)?.Move(door) is not { } motion) return ExitStatus.UnusableInput;
        (PartsTyped? parts, IReadOnlyList<InputFault> faults) = PartsTyped.Read(typed.Quantity, typed.First, typed.Second, motion.Vehicle, QuantityCatalogue.Standard);
        (PoseTyped? pose, IReadOnlyList<InputFault> poseFaults) = PoseTyped.Read(at, motion);
        if (parts is null || pose is null) return InputFault.Print(door, [.. faults, .. poseFaults]);
        if (at is not null)
            foreach (string taken in pose.TakenAsZero) door.Error.WriteLine($"note: {taken}.");
        if (at is not null) over = PoseSet.AllPoses;
        var measurer = new Measurer(motion, parts.Quantity, over);
        return parts.First is { } part
            ? One(door, motion, parts, at is null ? measurer.Worst(part, parts.Second) : measurer.At(part, parts.Second, pose), over, json)
            : Closest(door, motion, parts, at is null ? measurer.Closest : _ => measurer.ClosestAt(pose), over, json);
    }

    private static int One(Door door, VehicleMotion motion, PartsTyped parts, MeasuredSubject measured, PoseSet over, bool json)
    {
        door.Output.Write(json ? MeasureJson.One(parts.Quantity, measured, Solves(motion)) : MeasureTable.Write(parts.Quantity, [measured], over));
        return measured.Value is null ? ExitStatus.Findings : ExitStatus.Nothing;
    }

    private static int Closest(
        Door door, VehicleMotion motion, PartsTyped parts, Func<IProgress<(int Done, int Of)>, ImmutableArray<MeasuredSubject>> measure, PoseSet over, bool json)
    {
        using var progress = new ProgressLine(door);
        ImmutableArray<MeasuredSubject> measured = measure(progress);
        door.Output.Write(json ? MeasureJson.Closest(parts.Quantity, measured, Solves(motion)) : MeasureTable.Write(parts.Quantity, measured, over));
        return measured.Any(m => m.Value is null) ? ExitStatus.Findings : ExitStatus.Nothing;
    }

    private static long Solves(VehicleMotion motion) => motion.Modules.Sum(m => m.Motion.Solves);
}
