using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files.States;

/// <summary>Reads the name of a state in which something was measured.</summary>
internal static class StateWord
{
    /// <summary>The state; null when none is typed or it is faulty.</summary>
    public static Placed<string>? Read(Field field, VehicleDraft draft) => draft.States.ByName.IsEmpty ? field.Id() : field.Word([.. draft.States.ByName.Keys]);
}
