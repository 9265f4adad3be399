using System.Collections.Immutable;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Makes linkages of bodies and joints, and finds what is wrong with those that make none.</summary>
internal static class LinkageBuilder
{
    public static (Linkage? Linkage, LinkageFault? Fault) Build(ImmutableArray<string> names, ImmutableArray<Joint> joints, int coordinates)
    {
        foreach (Joint joint in joints)
            if (HasNoLength(joint)) return (null, new LinkageFault(LinkageFaultKind.NoLength, [joint.Name]));
        return Assemble(names, All(names, joints), coordinates, []);
    }

    /// <summary>The joints as a linkage has them: with what holds spins first, and settings last.</summary>
    public static ImmutableArray<Joint> All(ImmutableArray<string> names, ImmutableArray<Joint> joints) => InOrder([.. SpinHolds.For(names, joints), .. joints]);

    /// <summary>As <see cref="Build"/>, of joints that hold every spin already, and of driven bodies.</summary>
    /// <param name="names">Names of the bodies.</param>
    /// <param name="joints">Joints and settings.</param>
    /// <param name="coordinates">Number of coordinates.</param>
    /// <param name="driven">Bodies whose places are given with the pose.</param>
    public static (Linkage? Linkage, LinkageFault? Fault) Assemble(
        ImmutableArray<string> names, ImmutableArray<Joint> joints, int coordinates, ImmutableArray<int> driven)
    {
        ImmutableArray<Joint> all = InOrder(joints);
        var draft = new Linkage(names, all, coordinates, driven);
        foreach (Joint joint in all)
            if (HasNoFreedomToSet(draft, joint)) return (null, new LinkageFault(LinkageFaultKind.SettingWithoutFreedom, [joint.Name]));
        var rows = new EquationRows(draft, coordinates);
        double[] matrix = rows.DerivativesAtStart();
        (bool[] independent, List<double[]> basis) = IndependentRows.Find(matrix, rows.Groups, draft.BodyUnknowns);
        int first = 0;
        for (int i = 0; i < all.Length; first += draft.EquationCounts[i++])
            if (all[i].IsSetting && !independent[first]) return (null, new LinkageFault(LinkageFaultKind.SettingWithoutFreedom, [all[i].Name]));
        if (basis.Count < draft.BodyUnknowns) return (null, new LinkageFault(LinkageFaultKind.Loose, LooseBodies(draft, basis)));
        return (new Linkage(draft, independent.AsSpan(0, first), matrix), null);
    }

    // Settings come last, so that a setting without freedom is what gets named, not a rod.
    private static ImmutableArray<Joint> InOrder(ImmutableArray<Joint> joints) => [.. joints.OrderBy(j => j.IsSetting ? 1 : 0)];

    /// <summary>True for a rod or leaf whose ends are one point: it has no direction.</summary>
    public static bool HasNoLength(Joint joint) => joint switch
    {
        Joint.Rod rod => !(rod.LengthMm > Follower.ShortestMm),
        Joint.Spring spring => !(spring.LengthMm > Follower.ShortestMm),
        Joint.Leaf leaf => !(LeafShape.MeasuredTip(leaf).X > Follower.ShortestMm),
        Joint.Hinge hinge => !(hinge.Axis.Length > Follower.ShortestMm),
        Joint.Slide slide => !(slide.Axis.Length > Follower.ShortestMm),
        _ => false,
    };

    // A coordinate turns or shifts only what a hinge or a slide carries.
    private static bool HasNoFreedomToSet(Linkage draft, Joint joint) => joint switch
    {
        Joint.Turn turn => draft.Carriages[turn.Body].Kind != CarriageKind.Turning,
        Joint.Shift shift => draft.Carriages[shift.Body].Kind != CarriageKind.Sliding,
        _ => false,
    };

    // The bodies that a direction square to all rows would still move.
    private static List<string> LooseBodies(Linkage draft, List<double[]> basis)
    {
        var loose = new List<string>();
        for (int body = 1; body < draft.Bodies.Length; body++)
        {
            double most = 0;
            for (int i = 0; i < draft.Carriages[body].Unknowns; i++)
                most = Math.Max(most, 1 - basis.Sum(b => b[draft.Carriages[body].FirstUnknown + i] * b[draft.Carriages[body].FirstUnknown + i]));
            if (most > 1e-6) loose.Add(draft.Bodies[body]);
        }

        return loose;
    }
}
