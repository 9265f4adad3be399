namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What a person answered to an item.</summary>
public enum AnswerOutcome
{
    Ok,
    NotOk,

    /// <summary>Looked at the list and not done: the same as no answer, with a note on why.</summary>
    NotDone,
}
