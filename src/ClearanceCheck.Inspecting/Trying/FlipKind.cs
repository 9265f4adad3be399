namespace ClearanceCheck.Inspecting.Trying;

/// <summary>What is judged.</summary>
public enum FlipKind
{
    Finding,
    Item,
    Expected,
}
