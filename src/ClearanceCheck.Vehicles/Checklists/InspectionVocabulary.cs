using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What the rules ask a person, so that an inspection file is held against it word for word.</summary>
public sealed record InspectionVocabulary(ImmutableArray<AskedItem> Items, ImmutableArray<Expectation> Expected);
