using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Tables;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Steered wheels: cross-over steering on a solid axle and a rack on double wishbones, against tables of an independent program.</summary>
public sealed class SteeringTests
{
    private const double PositionMm = 1e-6;
    private const double AngleDeg = 1e-7;
    private const double Degree = Math.PI / 180;

    [Fact]
    public void Cross_over_steering_meets_its_table()
    {
        ReferenceTable table = ReferenceTable.Read("crossover-steering");
        LinkageMotion motion = CrossOver();
        Dictionary<string, double[]> given = CrossOverPoints();
        foreach (double[] row in table.Rows)
        {
            SolvedPose pose = motion.At([table.Value(row, "heave"), table.Value(row, "heave"), table.Value(row, "pitman_angle") * Degree]);

            pose.Answer.ShouldBe(PoseAnswerKind.Solved, $"{row[0]}, {row[1]}");
            Near(pose[4].Apply(V(given["pitman_end"])), table.Point(row, "pitman_end_"), PositionMm);
            Near(pose[3].Apply(V(given["drag_outer"])), table.Point(row, "drag_outer_"), PositionMm);
            Near(pose[2].Apply(V(given["tie_L"])), table.Point(row, "tieL_"), PositionMm);
            Near(pose[3].Apply(V(given["tie_R"])), table.Point(row, "tieR_"), PositionMm);
            Near(pose[2].Apply(V(given["hub_L"])), table.Point(row, "hubL_"), PositionMm);
            Near(pose[3].Apply(V(given["hub_R"])), table.Point(row, "hubR_"), PositionMm);
            Knuckle(pose, 2, given, "kpL").ShouldBe(table.Value(row, "knuckleL_turn"), AngleDeg);
            Knuckle(pose, 3, given, "kpR").ShouldBe(table.Value(row, "knuckleR_turn"), AngleDeg);
        }
    }

    [Fact]
    public void Double_wishbones_with_a_rack_meet_their_table()
    {
        ReferenceTable table = ReferenceTable.Read("double-wishbone");
        LinkageMotion motion = Wishbones();
        Dictionary<string, double[]> given = ReferenceTable.Inputs("double-wishbone");
        foreach (double[] row in table.Rows)
        {
            SolvedPose pose = motion.At([table.Value(row, "travel"), table.Value(row, "rack")]);

            pose.Answer.ShouldBe(PoseAnswerKind.Solved, $"{row[0]}, {row[1]}");
            Near(pose[3].Apply(V(given["hub"])), table.Point(row, "hub_"), PositionMm);
            Near(pose[3].Apply(V(given["lo"])), table.Point(row, "lower_ball_"), PositionMm);
            Near(pose[2].Apply(V(given["uo"])), table.Point(row, "upper_ball_"), PositionMm);
            Near(pose[3].Apply(V(given["to"])), table.Point(row, "tie_outer_"), PositionMm);
            Near(pose[3].Rotation.ToRotationVector() / Degree, table.Point(row, "rotvec_"), AngleDeg);
        }
    }

    [Fact]
    public void What_a_hinge_carries_stays_on_it()
    {
        LinkageMotion motion = CrossOver();
        Dictionary<string, double[]> given = CrossOverPoints();
        foreach (double[] at in (double[][])[[-100, 80, 0.5], [90, -60, -0.5], [119, 119, 0.52]])
        {
            SolvedPose pose = motion.At(at);

            foreach (string end in (string[])["kpL_lower", "kpL_upper"]) Near(pose[1].Apply(V(given[end])), pose[2].Apply(V(given[end])), 1e-11);
        }
    }

    internal static Dictionary<string, double[]> CrossOverPoints() => ReferenceTable.Inputs("three-link-axle").Concat(ReferenceTable.Inputs("crossover-steering"))
        .ToDictionary(p => p.Key, p => p.Value);

    internal static LinkageMotion CrossOver()
    {
        Dictionary<string, double[]> given = CrossOverPoints();
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(
            ["chassis", "axle", "knuckle L", "knuckle R", "pitman arm"],
            [
                .. Enumerable.Range(1, 4).Select(i => new Joint.Rod($"rod{i}", 0, V(given[$"rod{i}_frame"]), 1, V(given[$"rod{i}_axle"]))),
                new Joint.Hinge("kingpin L", 1, 2, V(given["kpL_lower"]), V(given["kpL_upper"]) - V(given["kpL_lower"])),
                new Joint.Hinge("kingpin R", 1, 3, V(given["kpR_lower"]), V(given["kpR_upper"]) - V(given["kpR_lower"])),
                new Joint.Hinge("sector shaft", 0, 4, V(given["sector"]), V(given["sector_axis"])),
                new Joint.Rod("drag link", 4, V(given["pitman_end"]), 3, V(given["drag_outer"])),
                new Joint.Rod("tie rod", 3, V(given["tie_R"]), 2, V(given["tie_L"])),
                new Joint.Travel("left", 1, V(given["hub_L"]), 0, 0), new Joint.Travel("right", 1, V(given["hub_R"]), 1, 0),
                new Joint.Turn("pitman arm", 4, 2, 0),
            ],
            3);
        fault.ShouldBeNull();
        return new LinkageMotion(linkage!, new PoseBox([new("left", false, -120, 120), new("right", false, -120, 120), new("steer", true, -30 * Degree, 30 * Degree)]), []);
    }

    internal static LinkageMotion Wishbones()
    {
        Dictionary<string, double[]> given = ReferenceTable.Inputs("double-wishbone");
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(
            ["chassis", "lower arm", "upper arm", "knuckle", "rack"],
            [
                new Joint.Hinge("lower pivots", 0, 1, V(given["lf"]), V(given["lr"]) - V(given["lf"])),
                new Joint.Hinge("upper pivots", 0, 2, V(given["uf"]), V(given["ur"]) - V(given["uf"])),
                new Joint.Ball("lower ball", 1, 3, V(given["lo"])), new Joint.Ball("upper ball", 2, 3, V(given["uo"])),
                new Joint.Slide("rack", 0, 4, V(given["ti"]), Vector3d.UnitY),
                new Joint.Rod("tie rod", 4, V(given["ti"]), 3, V(given["to"])),
                new Joint.Travel("hub", 3, V(given["hub"]), 0, 0), new Joint.Shift("rack", 4, 1, 0),
            ],
            2);
        fault.ShouldBeNull();
        return new LinkageMotion(linkage!, new PoseBox([new("travel", false, -90, 90), new("rack", false, -60, 60)]), []);
    }

    private static double Knuckle(SolvedPose pose, int body, Dictionary<string, double[]> given, string kingpin)
    {
        Vector3d turn = (pose[1].Rotation.Inverse * pose[body].Rotation).ToRotationVector();
        return Vector3d.Dot(turn, (V(given[kingpin + "_upper"]) - V(given[kingpin + "_lower"])).NormalizedOr(default)) / Degree;
    }

    private static Vector3d V(double[] v) => ReferenceTable.Vector(v);

    private static void Near(Vector3d actual, Vector3d expected, double tolerance)
    {
        actual.X.ShouldBe(expected.X, tolerance);
        actual.Y.ShouldBe(expected.Y, tolerance);
        actual.Z.ShouldBe(expected.Z, tolerance);
    }
}
