using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>Whether what a whole vehicle has is in the file, or declared absent.</summary>
internal static class CoverageJudge
{
    public static IEnumerable<CoverageCard> Judge(CoverageRow row, Vehicle vehicle) =>
        row.Expectation.Slots(vehicle.Axles, vehicle.Record.Absent, vehicle.Description.Drive).Select(slot => Judge(row, slot, vehicle));

    private static CoverageCard Judge(CoverageRow row, ExpectedSlot slot, Vehicle vehicle)
    {
        ImmutableArray<string> parts = [.. vehicle.Parts.Where(p => row.Expectation.Kinds.Contains(p.Kind.Id) && slot.Holds(p)).Select(p => p.Id)];
        Absence? absence = vehicle.Record.Absent.FirstOrDefault(a => a.Id == slot.Id);
        CoverageOutcome outcome = parts.Length >= row.Expectation.Count ? CoverageOutcome.Present
            : absence is not null ? CoverageOutcome.Absent
            : CoverageOutcome.NotInspected;
        return new CoverageCard(
            slot.Id, Title(row, slot), row.Severity, row.Consequence, new SourceCard(row.Source.Basis, row.Source.Known, row.Source.Text), outcome, row.Expectation.Count, parts, absence?.Reason);
    }

    private static string Title(CoverageRow row, ExpectedSlot slot) =>
        slot.Axle is null ? row.Title : $"{row.Title}, {slot.Axle} axle{(slot.Body is { } body && body != $"{slot.Axle}/axle" ? " " + body.Split('/')[^1].Replace('-', ' ') : "")}";
}
