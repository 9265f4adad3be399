using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files;

/// <summary>The bytes of an inspection file, and a way to the files beside it.</summary>
/// <param name="Name">Bare name, for messages.</param>
/// <param name="Content">The bytes as stored.</param>
/// <param name="Beside">Bytes of a file below the same folder by its relative path; null when there is none.</param>
public sealed record InspectionFile(string Name, ReadOnlyMemory<byte> Content, Func<string, ReadOnlyMemory<byte>?> Beside)
{
    /// <summary>What the rules ask and expect; null where no rules are loaded, and then any id may be answered or absent.</summary>
    public InspectionVocabulary? Vocabulary { get; init; }
}
