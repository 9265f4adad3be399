using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What the inspector answers for, beside what was measured.</summary>
public sealed record InspectorsRecord
{
    public static InspectorsRecord Empty { get; } = new();

    public ImmutableArray<Answer> Answers { get; init; } = [];

    public ImmutableArray<Tightening> Tightened { get; init; } = [];

    public ImmutableArray<TemporaryState> Temporary { get; init; } = [];

    public ImmutableArray<Absence> Absent { get; init; } = [];

    /// <summary>Words of <see cref="FittedWords"/>; null where the file does not say.</summary>
    public ImmutableArray<string>? Fitted { get; init; }
}
