using System.Collections.Immutable;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Part of a linkage that its own equations decide: an axle without its steering, one side of an independent suspension.</summary>
/// <remarks>
/// Each unknown is matched with an equation that decides it (a perfect matching, as the equations are as many and independent); it
/// depends on the other unknowns in there, and so on. What the unknowns of some bodies reach that way is a square system of its own
/// (A. L. Dulmage and N. S. Mendelsohn, "Coverings of bipartite graphs", Canadian Journal of Mathematics 10, 1958; from memory).
/// What forces move counts as one: the balance of each of these bodies knows the loads of the others.
/// </remarks>
/// <param name="Linkage">The part.</param>
/// <param name="Bodies">For each of its bodies the number in the whole; the chassis comes first.</param>
/// <param name="Coordinates">For each of its coordinates the number in the whole.</param>
internal sealed record LinkagePart(Linkage Linkage, ImmutableArray<int> Bodies, ImmutableArray<int> Coordinates)
{
    /// <summary>The part that these bodies make; null when it would have all coordinates of the whole, or none.</summary>
    /// <param name="whole">The linkage.</param>
    /// <param name="needed">Bodies that need no others: see <see cref="Needed"/>.</param>
    public static LinkagePart? Of(Linkage whole, ImmutableArray<int> needed)
    {
        Joint[] inside = [.. whole.Joints.Where(j => IsInside(j, needed))];
        ImmutableArray<int> coordinates = [.. inside.Select(j => j.SetCoordinate).OfType<int>().Distinct().Order()];
        if (coordinates.IsEmpty || coordinates.Length == whole.Coordinates) return null;
        ImmutableArray<int> numbers = [0, .. needed];
        Joint?[] joints = [.. inside.Select(j => j.Renumbered(body => numbers.IndexOf(body), c => coordinates.IndexOf(c)))];
        if (joints.Contains(null)) return null;
        (Linkage? part, _) = LinkageBuilder.Assemble([.. numbers.Select(b => whole.Bodies[b])], [.. joints.OfType<Joint>()], coordinates.Length, []);
        return part is null ? null : new LinkagePart(part, numbers, coordinates);
    }

    /// <summary>The rest of the whole, in the whole's numbers, driven by the part; null when it can't be solved for so.</summary>
    public Linkage? Rest(Linkage whole)
    {
        ImmutableArray<int> driven = Bodies[1..];
        (Linkage? rest, _) = LinkageBuilder.Assemble(whole.Bodies, [.. whole.Joints.Where(j => !IsInside(j, driven))], whole.Coordinates, driven);
        return rest is { IsSoft: false } ? rest : null;
    }

    /// <summary>Some bodies, what decides them, and what decides that, in order.</summary>
    public static ImmutableArray<int> Needed(Linkage whole, IEnumerable<int> bodies)
    {
        int[] decider = Deciders(whole);
        var needed = new SortedSet<int>();
        var next = new Stack<int>(bodies);
        while (next.TryPop(out int body))
        {
            if (body == 0 || !needed.Add(body)) continue;
            Carriage carriage = whole.Carriages[body];
            next.Push(carriage.Parent);
            if (whole.IsLoaded(body))
                foreach (int other in Enumerable.Range(1, whole.Bodies.Length - 1).Where(whole.IsLoaded)) next.Push(other);
            else
                for (int i = 0; i < carriage.Unknowns; i++)
                    foreach (int other in whole.Joints[decider[carriage.FirstUnknown + i]].Bodies) next.Push(other);
        }

        return [.. needed];
    }

    private static bool IsInside(Joint joint, ImmutableArray<int> bodies)
    {
        foreach (int body in joint.Bodies)
            if (body != 0 && !bodies.Contains(body)) return false;
        return true;
    }

    // For each unknown that no force moves the joint whose equation is matched with it: augmenting paths (H. W. Kuhn, 1955; from memory).
    private static int[] Deciders(Linkage whole)
    {
        var rows = new List<(int Joint, int[] Unknowns)>();
        for (int joint = 0; joint < whole.Joints.Length; joint++)
        {
            int[] unknowns = FreeUnknowns(whole, whole.Joints[joint]);
            for (int k = 0; unknowns.Length > 0 && k < whole.UsedEquations(joint); k++) rows.Add((joint, unknowns));
        }

        var rowOf = new int[whole.BodyUnknowns];
        Array.Fill(rowOf, -1);
        for (int row = 0; row < rows.Count; row++) TryMatch(row, new bool[whole.BodyUnknowns]);
        return [.. rowOf.Select(row => row < 0 ? -1 : rows[row].Joint)];

        bool TryMatch(int row, bool[] seen)
        {
            foreach (int unknown in rows[row].Unknowns)
            {
                if (seen[unknown]) continue;
                seen[unknown] = true;
                if (rowOf[unknown] >= 0 && !TryMatch(rowOf[unknown], seen)) continue;
                rowOf[unknown] = row;
                return true;
            }

            return false;
        }
    }

    // The unknowns in a joint's equations, of its bodies and of what carries them, that no force moves.
    private static int[] FreeUnknowns(Linkage whole, Joint joint)
    {
        var unknowns = new SortedSet<int>();
        foreach (int end in joint.Bodies)
            for (int body = end; body != 0; body = whole.Carriages[body].Parent)
                for (int i = 0; i < whole.Carriages[body].Unknowns && !whole.IsLoaded(body); i++) unknowns.Add(whole.Carriages[body].FirstUnknown + i);
        return [.. unknowns];
    }
}
