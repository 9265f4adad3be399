using System.Buffers.Binary;

namespace ClearanceCheck.Cli.Tests.Inputs;

public sealed class LargeScanTests
{
    private const int Across = 200, Up = 150;

    [Fact]
    public void A_scan_larger_than_any_text_is_read_whole()
    {
        using Workshop shop = Workshop.WithFixture("wheel-well");
        byte[] mesh = Sheet();
        mesh.Length.ShouldBeGreaterThan(Documents.DocumentLimits.MostText);
        File.WriteAllBytes(shop.At("inner-panel.stl"), mesh);

        Answer answer = shop.Run("measure", "inspection.yaml", "--quantity", "gap", "--first", "frame-rail-left", "--second", "inner-panel-left", "--format", "json");

        answer.Error.ShouldBeEmpty();
        answer.Status.ShouldBe(0);
        // The sheet stands at y 560, the rail's outer side at 370.
        System.Text.Json.Nodes.JsonNode.Parse(answer.Output)!.ToJsonString().ShouldContain("\"value\":190");
    }

    // A flat sheet at y 560, 760 mm long and 420 mm high, as binary STL.
    private static byte[] Sheet()
    {
        var mesh = new byte[84 + (50 * 2 * Across * Up)];
        BinaryPrimitives.WriteInt32LittleEndian(mesh.AsSpan(80), 2 * Across * Up);
        int at = 84;
        for (int i = 0; i < Across; i++)
            for (int j = 0; j < Up; j++)
            {
                Write((i, j), (i + 1, j), (i + 1, j + 1));
                Write((i, j), (i + 1, j + 1), (i, j + 1));
            }

        return mesh;

        void Write(params ReadOnlySpan<(int I, int J)> corners)
        {
            for (int c = 0; c < 3; c++)
            {
                (int i, int j) = corners[c];
                BinaryPrimitives.WriteSingleLittleEndian(mesh.AsSpan(at + 12 + (12 * c)), -1000 + (760f * i / Across));
                BinaryPrimitives.WriteSingleLittleEndian(mesh.AsSpan(at + 16 + (12 * c)), 560);
                BinaryPrimitives.WriteSingleLittleEndian(mesh.AsSpan(at + 20 + (12 * c)), -120 + (420f * j / Up));
            }

            at += 50;
        }
    }
}
