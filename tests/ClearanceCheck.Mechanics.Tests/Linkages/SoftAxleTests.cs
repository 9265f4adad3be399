using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Tables;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Axles that move only because their bushings give, against tables of an independent program that minimised the same energies.</summary>
public sealed class SoftAxleTests
{
    private const double PositionMm = 1e-5;
    private const double AngleDeg = 1e-6;

    [Fact]
    public void Radius_arms_rigid_on_the_axle_meet_their_table() => Compare("radius-arm-axle", RigidArms(), "rotvec_");

    [Fact]
    public void Radius_arms_as_bodies_meet_their_table() => Compare("radius-arm-bodies", ArmsAsBodies(), "axle_rotvec_");

    [Fact]
    public void Four_links_and_a_track_bar_meet_their_table() => Compare("four-link-axle", FourLinks(), "rotvec_");

    [Fact]
    public void The_gives_of_the_bushings_are_those_of_the_table()
    {
        ReferenceTable table = ReferenceTable.Read("radius-arm-bodies");
        LinkageMotion motion = ArmsAsBodies();
        foreach (double[] row in table.Rows)
        {
            double[] at = [row[0], row[1]];

            LinkageLoads loads = LinkageLoads.Of(motion.Linkage, motion.At(at).Bodies.Span, at);

            foreach (string bushing in (string[])["L_frame", "L_axle_front", "L_axle_rear", "R_frame", "R_axle_front", "R_axle_rear"])
                Near(loads.Soft.Single(s => s.Joint == bushing).GiveMm, table.Point(row, bushing + "_d"), PositionMm);
        }
    }

    // The table's rotations have six to nine decimals.
    private static void Compare(string name, LinkageMotion motion, string turn)
    {
        ReferenceTable table = ReferenceTable.Read(name);
        Vector3d left = ReferenceTable.Vector(ReferenceTable.Inputs(name)["hub_L"]), right = ReferenceTable.Vector(ReferenceTable.Inputs(name)["hub_R"]);
        foreach (double[] row in table.Rows)
        {
            double[] at = [row[0], row[1]];

            SolvedPose pose = motion.At(at);

            pose.Answer.ShouldBe(PoseAnswerKind.Solved, $"{row[0]}, {row[1]}");
            Near(pose[1].Apply(left), table.Point(row, "hubL_"), PositionMm);
            Near(pose[1].Apply(right), table.Point(row, "hubR_"), PositionMm);
            Near(pose[1].Rotation.ToRotationVector() * Trigonometry.DegreesPerRadian, table.Point(row, turn), AngleDeg);
            double energy = table.Value(row, "energy"), found = LinkageLoads.Of(motion.Linkage, pose.Bodies.Span, at).Soft.Sum(s => s.EnergyNmm);
            found.ShouldBe(energy, 1e-4 + (1e-6 * energy));
        }
    }

    internal static LinkageMotion RigidArms()
    {
        Dictionary<string, double[]> given = ReferenceTable.Inputs("radius-arm-axle");
        return Motion(
            ["chassis", "axle"],
            given,
            [
                .. ((string[])["bush1", "bush2"]).Select(b => new Joint.Bushing(
                    b, 0, 1, V(given[b + "_point"]), Rotation.Identity, V(given[b + "_stiffness"]), V(given[b + "_rotational_stiffness"]), false)),
            ]);
    }

    internal static LinkageMotion ArmsAsBodies(bool ridesOnHousing = false)
    {
        Dictionary<string, double[]> given = ReferenceTable.Inputs("radius-arm-bodies");
        return Motion(
            ["chassis", "axle", "arm L", "arm R"],
            given,
            [
                .. ((string[])["L", "R"]).SelectMany((side, i) => new Joint[]
                {
                    new Joint.Bushing($"{side}_frame", 0, 2 + i, V(given[$"{side}_frame_bush"]), Rotation.Identity, V(given[$"{side}_K_frame"]), V(given[$"{side}_K_rot_frame"]), ridesOnHousing),
                    new Joint.Bushing($"{side}_axle_front", 1, 2 + i, V(given[$"{side}_axle_front_bush"]), Rotation.Identity, V(given[$"{side}_K_axle"]), default, ridesOnHousing),
                    new Joint.Bushing($"{side}_axle_rear", 1, 2 + i, V(given[$"{side}_axle_rear_bush"]), Rotation.Identity, V(given[$"{side}_K_axle"]), default, ridesOnHousing),
                }),
            ]);
    }

    internal static LinkageMotion FourLinks()
    {
        Dictionary<string, double[]> given = ReferenceTable.Inputs("four-link-axle");
        return Motion(
            ["chassis", "axle"],
            given,
            [
                .. Enumerable.Range(1, 4).Select(i => new Joint.Spring(
                    $"link{i}", 0, V(given[$"link{i}_frame"]), 1, V(given[$"link{i}_axle"]), given[$"link{i}_stiffness"][0])),
            ]);
    }

    private static LinkageMotion Motion(string[] bodies, Dictionary<string, double[]> given, Joint[] soft)
    {
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(
            bodies,
            [
                new Joint.Rod("track bar", 0, V(given["rod1_frame"]), 1, V(given["rod1_axle"])), .. soft,
                new Joint.Travel("left", 1, V(given["hub_L"]), 0, 0), new Joint.Travel("right", 1, V(given["hub_R"]), 1, 0),
            ],
            2);
        fault.ShouldBeNull();
        linkage!.IsSoft.ShouldBeTrue();
        return new LinkageMotion(linkage, new PoseBox([new("left", false, -120, 120), new("right", false, -120, 120)]), []);
    }

    private static Vector3d V(double[] v) => ReferenceTable.Vector(v);

    private static void Near(Vector3d actual, Vector3d expected, double tolerance)
    {
        actual.X.ShouldBe(expected.X, tolerance);
        actual.Y.ShouldBe(expected.Y, tolerance);
        actual.Z.ShouldBe(expected.Z, tolerance);
    }
}
