using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Files;

/// <summary>Reads the name of a body that a part is fixed to.</summary>
internal static class BodyWord
{
    /// <summary>The body, or null when it is faulty or belongs to an axle that is: that fault has been said.</summary>
    public static Placed<string>? Read(Field field, VehicleDraft draft)
    {
        if (field.Node is ScalarNode typed && draft.FaultyAxles.Exists(axle => typed.Text.StartsWith(axle + "/", StringComparison.Ordinal))) return null;
        return field.Word(draft.Bodies);
    }
}
