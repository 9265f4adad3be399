namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Bodies that no soft joint loads, in groups that joints tie together.</summary>
internal static class LoadFreeGroups
{
    public static List<HashSet<int>> Of(Linkage linkage)
    {
        var loaded = linkage.Joints.Where(j => j.IsSoft || j is Joint.Torque).SelectMany(j => j.Bodies.ToArray()).ToHashSet();
        // What carries a loaded body takes its load.
        foreach (int body in linkage.Order.Reverse())
            if (loaded.Contains(body) && linkage.Carriages[body].Parent != 0) loaded.Add(linkage.Carriages[body].Parent);
        var groups = new List<HashSet<int>>();
        foreach (int body in Enumerable.Range(1, linkage.Bodies.Length - 1).Where(b => !loaded.Contains(b)))
        {
            HashSet<int> merged = [body];
            foreach (HashSet<int> group in groups.Where(g => linkage.Joints.Any(j => Touches(j, g) && j.Bodies.Contains(body))).ToArray())
            {
                merged.UnionWith(group);
                groups.Remove(group);
            }

            groups.Add(merged);
        }

        return groups;
    }

    public static bool Touches(Joint joint, HashSet<int> group)
    {
        foreach (int body in joint.Bodies)
            if (group.Contains(body)) return true;
        return false;
    }
}
