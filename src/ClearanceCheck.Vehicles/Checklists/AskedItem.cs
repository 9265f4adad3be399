using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What an answer to an item has to carry where a yes alone is too cheap.</summary>
/// <param name="Units">Units that its value may have; empty where no value is asked for.</param>
/// <param name="NeedsMark">True where a mark on the thing itself is asked for.</param>
public sealed record AskedItem(string Id, ImmutableArray<string> Units, bool NeedsMark);
