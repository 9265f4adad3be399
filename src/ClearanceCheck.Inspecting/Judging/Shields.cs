using System.Collections.Immutable;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Whether a heat shield of the file stands between two parts.</summary>
/// <remarks>
/// It does when the line between the nearest points cuts it, in every pose that was found in which the two come near each other. A
/// shield that only stands beside them, or only in some of the poses, does not count, and the finding says so.
/// </remarks>
internal sealed class Shields(VehicleMotion motion)
{
    private const string Kind = "heat-shield";

    private readonly ImmutableArray<Part> shields = [.. motion.Vehicle.Parts.Where(p => p.Kind.Id == Kind)];

    public (bool Holds, ImmutableArray<string> Said) Between(ImmutableArray<Part> subject, Measurement measured)
    {
        ImmutableArray<Part> others = [.. shields.Where(s => !subject.Contains(s))];
        if (others.IsEmpty) return (false, []);
        List<ImmutableArray<Part>> cut = [.. measured.Places.Select(place => others.Where(s => Cuts(s, measured.Module, place)).ToImmutableArray())];
        if (cut.TrueForAll(c => !c.IsEmpty))
            return (true, [.. cut.SelectMany(c => c).Distinct().Select(s => $"{s.Name} stands between the two where they come nearest, so the limit behind a shield holds.")]);
        string where = cut[0].IsEmpty ? "where the two come nearest" : "in every pose in which the two come near each other";
        return (false, [.. others.Select(s => $"{s.Name} does not stand between the two {where}, so the limit without a shield holds.")]);
    }

    private bool Cuts(Part shield, AxleModule? module, WorstPlace place)
    {
        // A line on the chassis against a shield that may ride on another axle: it can't be posed with this one, so it does not count.
        if (PairPlan.For(motion, [.. motion.CarriersOf(shield), .. module?.Bodies ?? []]) is null) return false;
        var line = new RigidSolid(0, new CapsuleChain([place.First, place.Second], 0));
        SolvedPose? pose = place.Pose.IsEmpty ? null : module?.Motion.At(place.Pose.AsSpan());
        foreach (ShapeMember member in PartShapes.Of(shield, motion, motion.Parameters.Span))
        {
            double gap = pose is null
                ? Sweep.StillGap(line.Solid, ((RigidSolid)member.Swept).Solid).Value
                : Sweep.GapAt(line, member.Swept, pose);
            if (gap <= 0) return true;
        }

        return false;
    }
}
