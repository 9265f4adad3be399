using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What the soft joints give in a pose, and what it takes to hold it.</summary>
/// <param name="Soft">Every soft joint, in the order of the linkage.</param>
/// <param name="Settings">Force (N) or moment (N mm) by the name of each setting that holds the pose against the soft joints; zero where nothing is soft.</param>
public sealed record LinkageLoads(ImmutableArray<SoftLoad> Soft, ImmutableArray<(string Setting, double Load)> Settings)
{
    /// <summary>Reads the loads of a solved pose.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="bodies">Places of its bodies; what comes after those, followers, is not read.</param>
    /// <param name="settings">The pose.</param>
    public static LinkageLoads Of(Linkage linkage, ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings)
    {
        bodies = bodies[..linkage.Bodies.Length];
        double[] loads = linkage.LoadsAt(bodies, settings);
        Placement<Real> at = linkage.Place<Real>(bodies, loads, new Real[linkage.Unknowns]);
        var soft = ImmutableArray.CreateBuilder<SoftLoad>();
        foreach (Joint joint in linkage.Joints)
        {
            if (joint is Joint.Spring spring) soft.Add(Of(spring, bodies));
            if (joint is Joint.Bushing bushing) soft.Add(Of(bushing, at));
            if (joint is Joint.Leaf leaf) soft.Add(Of(leaf, at));
        }

        return new LinkageLoads(soft.ToImmutable(), [.. linkage.Joints.Select((j, i) => (j, i)).Where(p => p.j.IsSetting).Select(p => (p.j.Name, Held(linkage, p.i, loads)))]);
    }

    private static double Held(Linkage linkage, int joint, double[] loads) =>
        linkage.LoadOf(joint) is { } index ? loads[index] * linkage.ReferenceStiffness * (linkage.Joints[joint] is Joint.Turn ? Linkage.RotationLengthMm : 1) : 0;

    private static SoftLoad Of(Joint.Spring spring, ReadOnlySpan<RigidMotion> bodies)
    {
        double stretch = (bodies[spring.SecondBody].Apply(spring.SecondPoint) - bodies[spring.FirstBody].Apply(spring.FirstPoint)).Length - spring.LengthMm;
        return new SoftLoad(spring.Name, new(stretch, 0, 0), default, spring.StiffnessNPerMm * Math.Abs(stretch), 0.5 * spring.StiffnessNPerMm * stretch * stretch);
    }

    private static SoftLoad Of(Joint.Bushing bushing, in Placement<Real> at)
    {
        int frame = bushing.RidesOnHousing ? bushing.FirstBody : 0;
        Vector3d apart = Plain(at.Point(bushing.SecondBody, bushing.Point) - at.Point(bushing.FirstBody, bushing.Point));
        Vector3d cayley = Plain(at.RelativeCayley(bushing.FirstBody, bushing.SecondBody));
        Vector3d turned = cayley * (2 * ArcSeries.Ratio(new Real(cayley.LengthSquared)).Value);
        double[] gives = new double[3], turns = new double[3];
        double force = 0, energy = 0;
        for (int k = 0; k < 3; k++)
        {
            Vector3d own = bushing.Axes.Apply(k == 0 ? Vector3d.UnitX : k == 1 ? Vector3d.UnitY : Vector3d.UnitZ);
            gives[k] = Vector3d.Dot(Plain(at.Direction(frame, own)), apart);
            turns[k] = Vector3d.Dot(own, turned);
            double one = bushing.Stiffness[k] * gives[k];
            force += one * one;
            energy += 0.5 * ((one * gives[k]) + (bushing.TurningStiffness[k] * turns[k] * turns[k]));
        }

        return new SoftLoad(bushing.Name, new(gives[0], gives[1], gives[2]), new(turns[0], turns[1], turns[2]), Math.Sqrt(force), energy);
    }

    private static SoftLoad Of(Joint.Leaf leaf, in Placement<Real> at)
    {
        Vector3d tip = Plain(LeafShape.Tip(leaf, at, out _, out _, out _)), measured = LeafShape.MeasuredTip(leaf);
        double length = LeafShape.MeasuredLengthMm(leaf), bent = LeafShape.Curvature(tip.Z, length) - LeafShape.Curvature(measured.Z, length);
        double aside = tip.Y - measured.Y;
        double energy = 0.5 * ((leaf.BendingStiffness * length * bent * bent) + (leaf.SidewaysNPerMm * aside * aside));
        return new SoftLoad(leaf.Name, tip - measured, default, leaf.BendingStiffness * Math.Abs(bent) / length, energy);
    }

    private static Vector3d Plain(Vector3<Real> v) => new(v.X.Value, v.Y.Value, v.Z.Value);
}

/// <summary>What one soft joint gives.</summary>
/// <param name="GiveMm">Along its own axes: of a spring its stretch first; of a leaf its tip in the seat's axes, against the measured state.</param>
/// <param name="TurnRad">About its own axes; rotation vector.</param>
/// <param name="ForceN">The force on it; of a leaf its bending moment over its length.</param>
/// <param name="EnergyNmm">The energy in it.</param>
public sealed record SoftLoad(string Joint, Vector3d GiveMm, Vector3d TurnRad, double ForceN, double EnergyNmm);
