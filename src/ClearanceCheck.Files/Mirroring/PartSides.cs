using System.Collections.Immutable;

namespace ClearanceCheck.Files.Mirroring;

/// <summary>Which parts were made of one that is typed with a side.</summary>
internal sealed class PartSides
{
    private readonly Dictionary<string, ImmutableArray<string>> made = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> sideOf = new(StringComparer.Ordinal);

    /// <summary>Notes that a part of that id stands for one on each side.</summary>
    public void Add(string id, Mirror mirror)
    {
        made[id] = [$"{id}-{mirror.Side}", $"{id}-{mirror.Other}"];
        (sideOf[made[id][0]], sideOf[made[id][1]]) = (mirror.Side, mirror.Other);
    }

    /// <summary>True when the id stands for a part on each side.</summary>
    public bool IsMirrored(string id) => made.ContainsKey(id);

    /// <summary>The parts that an id names beside a part: those of both sides, but beside a part of one side that of its own.</summary>
    public IEnumerable<string> Named(string id, string beside)
    {
        if (!made.TryGetValue(id, out ImmutableArray<string> ids)) return [id];
        return sideOf.TryGetValue(beside, out string? side) ? ids.Where(i => sideOf[i] == side) : ids;
    }
}
