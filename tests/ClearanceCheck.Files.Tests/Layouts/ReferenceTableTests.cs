using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Mechanics.Tests.Tables;

namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>The tables of an independent program, typed into inspection files as a free layout and as their own: what is read moves as they say.</summary>
public sealed class ReferenceTableTests
{
    private const double ExactMm = 1e-6, SoftMm = 1e-5, ClosedFormMm = 1e-9;
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData("free-three-link", "pitman_angle")]
    [InlineData("three-link", "knuckleR_turn")]
    public void Three_links_with_cross_over_steering_meet_their_table(string name, string steering)
    {
        ReferenceTable table = ReferenceTable.Read("crossover-steering");
        Dictionary<string, double[]> given = ReferenceTable.Inputs("three-link-axle").Concat(ReferenceTable.Inputs("crossover-steering")).ToDictionary(p => p.Key, p => p.Value);
        LayoutExample example = LayoutExample.Of(name);
        foreach (double[] row in table.Rows)
        {
            double heave = table.Value(row, "heave");

            SolvedPose pose = example.Solve(heave, heave, table.Value(row, steering) * Degree);

            Compare("pitman-arm", "pitman_end", "pitman_end_");
            Compare("knuckle-right", "drag_outer", "drag_outer_");
            Compare("knuckle-left", "tie_L", "tieL_");
            Compare("knuckle-right", "tie_R", "tieR_");
            Compare("knuckle-left", "hub_L", "hubL_");
            Compare("knuckle-right", "hub_R", "hubR_");

            void Compare(string body, string place, string column) =>
                Near(example.At(pose, body, ReferenceTable.Vector(given[place])), table.Point(row, column), ExactMm, $"{place} at {row[0]}, {row[1]}");
        }
    }

    [Theory]
    [InlineData("free-four-links", "four-link-axle", "rotvec_")]
    [InlineData("free-rigid-arms", "radius-arm-axle", "rotvec_")]
    [InlineData("free-arms", "radius-arm-bodies", "axle_rotvec_")]
    public void Axles_that_move_because_their_joints_give_meet_their_tables(string name, string tableName, string turn)
    {
        ReferenceTable table = ReferenceTable.Read(tableName);
        Dictionary<string, double[]> given = ReferenceTable.Inputs(tableName);
        LayoutExample example = LayoutExample.Of(name);
        foreach (double[] row in table.Rows)
        {
            SolvedPose pose = example.Solve(row[0], row[1]);

            Near(example.At(pose, "axle", ReferenceTable.Vector(given["hub_L"])), table.Point(row, "hubL_"), SoftMm, $"left hub at {row[0]}, {row[1]}");
            Near(example.At(pose, "axle", ReferenceTable.Vector(given["hub_R"])), table.Point(row, "hubR_"), SoftMm, $"right hub at {row[0]}, {row[1]}");
            Near(pose[1].Rotation.ToRotationVector() / Degree, table.Point(row, turn), 1e-6, $"turn at {row[0]}, {row[1]}");
        }
    }

    [Theory]
    [InlineData("free-beams")]
    [InlineData("split-beams")]
    public void Split_beams_meet_their_closed_form(string name)
    {
        ReferenceTable table = ReferenceTable.Read("split-beam");
        Dictionary<string, double[]> given = ReferenceTable.Inputs("split-beam");
        LayoutExample example = LayoutExample.Of(name);
        foreach (double[] row in table.Rows)
        {
            double[] at = new double[example.Module.Motion.Box.Dimensions];
            at[0] = row[0];

            SolvedPose pose = example.Solve(at);

            Near(example.At(pose, "beam-left", ReferenceTable.Vector(given["hub"])), table.Point(row, "hub_"), ClosedFormMm, $"hub at {row[0]}");
            Near(example.At(pose, "beam-left", ReferenceTable.Vector(given["kp_lower"])), table.Point(row, "kp_lower_"), ClosedFormMm, $"lower kingpin at {row[0]}");
            Near(example.At(pose, "beam-left", ReferenceTable.Vector(given["kp_upper"])), table.Point(row, "kp_upper_"), ClosedFormMm, $"upper kingpin at {row[0]}");
        }
    }

    [Theory]
    [InlineData("free-wishbones")]
    [InlineData("double-wishbones")]
    public void Double_wishbones_with_a_rack_meet_their_table(string name)
    {
        ReferenceTable table = ReferenceTable.Read("double-wishbone");
        Dictionary<string, double[]> given = ReferenceTable.Inputs("double-wishbone");
        LayoutExample example = LayoutExample.Of(name);
        foreach (double[] row in table.Rows)
        {
            SolvedPose pose = example.Solve(table.Value(row, "travel"), 0, table.Value(row, "rack"));

            Compare("knuckle-left", "hub", "hub_");
            Compare("knuckle-left", "lo", "lower_ball_");
            Compare("upper-arm-left", "uo", "upper_ball_");
            Compare("knuckle-left", "to", "tie_outer_");

            void Compare(string body, string place, string column) =>
                Near(example.At(pose, body, ReferenceTable.Vector(given[place])), table.Point(row, column), ExactMm, $"{place} at {row[0]}, {row[1]}");
        }
    }

    private static void Near(Vector3d actual, Vector3d expected, double tolerance, string where)
    {
        actual.X.ShouldBe(expected.X, tolerance, where);
        actual.Y.ShouldBe(expected.Y, tolerance, where);
        actual.Z.ShouldBe(expected.Z, tolerance, where);
    }
}
