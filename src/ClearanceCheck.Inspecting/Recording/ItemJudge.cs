using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules.Checklists;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>Whether an item is asked of a vehicle, and what was answered.</summary>
internal static class ItemJudge
{
    /// <summary>The item with its answer; null where it is not asked of this vehicle and nobody answered it.</summary>
    public static ItemCard? Judge(ChecklistItem item, Vehicle vehicle)
    {
        Answer? answer = vehicle.Record.Answers.FirstOrDefault(a => a.Item == item.Id);
        Absence? absence = vehicle.Record.Absent.FirstOrDefault(a => a.Id == item.Id);
        (bool isAsked, string? because) = Asks(item.AppliesTo, vehicle);
        if (!isAsked && answer is null && absence is null) return null;
        return new ItemCard
        {
            Id = item.Id,
            Title = item.Title,
            Ask = item.Ask,
            Family = item.Family,
            Gate = item.Gate,
            Severity = item.Severity,
            Consequence = item.Consequence,
            Source = new SourceCard(item.Source.Basis, item.Source.Known, item.Source.Text),
            Units = item.Units,
            NeedsMark = item.NeedsMark,
            Outcome = Outcome(item, answer, absence),
            Because = answer is null && absence is null ? because : null,
            Value = answer?.Value,
            Mark = answer?.Mark,
            By = answer?.By,
            Note = answer?.Note ?? absence?.Reason,
        };
    }

    // An answer counts only with what the item asks beside it, whichever door the model came through.
    private static ItemOutcome Outcome(ChecklistItem item, Answer? answer, Absence? absence) => answer switch
    {
        { Outcome: AnswerOutcome.NotOk } => ItemOutcome.Fails,
        { Outcome: AnswerOutcome.Ok } when (item.Units.IsEmpty || answer.Value is not null) && (!item.NeedsMark || answer.Mark is not null) => ItemOutcome.Ok,
        null when absence is not null => ItemOutcome.NotApplicable,
        _ => ItemOutcome.NotInspected,
    };

    private static (bool IsAsked, string? Because) Asks(ItemCondition condition, Vehicle vehicle)
    {
        bool hasKind = condition.Kinds.IsEmpty || vehicle.Parts.Any(p => condition.Kinds.Contains(p.Kind.Id));
        IEnumerable<Axle> inspected = vehicle.Axles.Where(a => vehicle.Scope.Contains(a.Name));
        bool hasAxle = condition.Axles.IsEmpty || inspected.Any(a => condition.Axles.Any(AxleFacts.Of(a, vehicle.Record.Absent, vehicle.Description.Drive).Contains));
        if (!hasKind || !hasAxle) return (false, null);
        if (condition.Fitted.IsEmpty) return (true, null);
        if (vehicle.Record.Fitted is { } fitted) return (condition.Fitted.Any(f => fitted.Contains(f)), null);
        return (true, $"the file does not say whether it has this ({string.Join(", ", condition.Fitted)}): write `fitted`");
    }
}
