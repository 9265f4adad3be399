namespace ClearanceCheck.Rules.Checklists;

/// <summary>When an item is asked.</summary>
public enum ChecklistGate
{
    BeforeFirstDrive,
    AfterFirstDrive,
}
