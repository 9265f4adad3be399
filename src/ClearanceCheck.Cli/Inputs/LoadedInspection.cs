using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>An inspection file read into a model, with what it was read from.</summary>
internal sealed record LoadedInspection(Vehicle Vehicle, InspectionReading Reading, ImmutableArray<InputFile> Inputs)
{
    /// <summary>Reads an inspection; every fault and note goes to standard error.</summary>
    /// <param name="file">The file.</param>
    /// <param name="door">The door.</param>
    /// <param name="vocabulary">What the rules ask and expect; null where no rules are loaded.</param>
    /// <returns>Null when the input can't be used; it has been said why.</returns>
    public static LoadedInspection? Load(string file, Door door, InspectionVocabulary? vocabulary = null)
    {
        (InspectionFolder? folder, InputFault? fault) = InspectionFolder.Open(file, door);
        if (folder is null)
        {
            InputFault.Print(door, fault!);
            return null;
        }

        InspectionReading reading = InspectionFileReader.Read(folder.ForReader() with { Vocabulary = vocabulary });
        if (reading.Diagnostics.Count > 0) door.Error.Write(DiagnosticRenderer.Render(reading.Diagnostics));
        if (reading.Vehicle is not { } vehicle) return null;
        ImmutableArray<InputFile> inputs = [.. folder.Read(reading.FilesBeside).Select(f => f.Card())];
        foreach (InputFile input in inputs) door.Log.Information("read {File}, {Bytes} bytes", input.Name, input.Bytes);
        return new LoadedInspection(vehicle, reading, inputs);
    }

    /// <summary>The vehicle in motion.</summary>
    /// <returns>Null when an axle can't be moved, or can't stand as it was measured; it has been said which and why.</returns>
    public VehicleMotion? Move(Door door)
    {
        (VehicleMotion? motion, string? axle, MotionFault? fault) = VehicleMotion.Build(Vehicle, Vehicle.Parameters.Nominal.ToArray());
        if (motion is null) Print(axle!, fault!, door);
        return motion;
    }

    /// <summary>Says which axle does not move and why, with the place in the file.</summary>
    public void Print(string axle, MotionFault fault, Door door) => door.Error.Write(DiagnosticRenderer.Render(MotionMessages.Of(axle, fault, Reading.Places)));
}
