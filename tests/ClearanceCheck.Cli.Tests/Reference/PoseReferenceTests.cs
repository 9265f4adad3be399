using System.Globalization;
using System.Text.Json.Nodes;
using ClearanceCheck.Mechanics.Tests.Linkages;

namespace ClearanceCheck.Cli.Tests.Reference;

/// <summary>The whole way from typed YAML to printed JSON against an independent program's hub positions.</summary>
public sealed class PoseReferenceTests
{
    private const double ToleranceMm = 1e-6;

    [Fact]
    public void Hubs_of_every_pose_of_the_reference_table_are_printed_within_a_millionth()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", new ThreeLinkFile().Write());

        foreach (double[] row in ThreeLinkAxleTable.Rows)
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"rear.left={row[0]}mm,rear.right={row[1]}mm");
            Answer answer = shop.Run("pose", "axle.yaml", "--at", at, "--format", "json");

            answer.Error.ShouldBeEmpty();
            JsonNode pose = JsonNode.Parse(answer.Output)!;
            pose["answer"]!.GetValue<string>().ShouldBe("solved");
            Near(pose["wheels"]!["rear.left"]!["hub"]!, row.AsSpan(2, 3), at);
            Near(pose["wheels"]!["rear.right"]!["hub"]!, row.AsSpan(5, 3), at);
            Near(pose["points"]!["axles/rear/wheels/left/hub"]!, row.AsSpan(2, 3), at);
            Near(pose["points"]!["axles/rear/joints/upper/at/1"]!, [-705, 245, 175], at);
        }

        ThreeLinkAxleTable.Rows.Length.ShouldBe(25);
    }

    private static void Near(JsonNode actual, ReadOnlySpan<double> expected, string pose)
    {
        for (int i = 0; i < 3; i++) actual[i]!.GetValue<double>().ShouldBe(expected[i], ToleranceMm, pose);
    }
}
