using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>The units that the value of an answer may have. Nothing is computed from such a value: it is printed as typed.</summary>
public static class AnswerUnits
{
    public static ImmutableArray<string> All { get; } = ["Nm", "lb-ft", "mm", "in", "deg", "%", "kg", "lb", "bar", "psi", "km", "mi", "turns"];
}
