using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using CsCheck;

namespace ClearanceCheck.Scans.Tests;

public sealed class FormatTests
{
    public static TheoryData<string> Names => Formats.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_box_comes_from_every_format(string format)
    {
        Scan scan = Formats.Read(format, TestMesh.Box).Sound();

        TestMesh.SoupOf(scan).ShouldBe(TestMesh.Box.Soup);
        scan.Points.Length.ShouldBe(8);
        scan.Extent.ShouldBe(new Vector3d(40, 24, 10));
        scan.File.ShouldBe(Formats.All[format].Name);
        // Points in order of first appearance in the triangles, whatever the order in the file.
        scan.Points.ShouldBe(TestMesh.Box.Soup.Distinct());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Numbers_do_not_depend_on_the_culture(string format) =>
        TestMesh.SoupOf(Cultures.Under("de-DE", () => Formats.Read(format, TestMesh.Box)).Sound()).ShouldBe(TestMesh.Box.Soup);

    [Fact]
    public void Any_triangles_come_back_in_order_and_to_the_last_bit()
    {
        Gen<Vector3d> point = Gen.Select(Gen.Float[-900, 900], Gen.Float[-900, 900], Gen.Float[-900, 900], (x, y, z) => new Vector3d(x, y, z));
        Gen<TestMesh> mesh = Gen.Select(point.Array[3, 20], Gen.Int[0, 1_000_000].Array[3, 60], (points, picks) =>
            new TestMesh(points, [.. picks.Take(picks.Length / 3 * 3).Select(p => p % points.Length)]));

        mesh.Sample(m =>
        {
            foreach (string format in Formats.All.Keys)
            {
                double longest = Longest(m);
                if (longest == 0) continue;
                ScanClaims claims = Reading.BoxClaims with { Sizes = [new ScanSize(ScanSide.Longest, longest, longest * 0.01)] };
                Scan scan = Formats.Read(format, m, claims).Sound();
                // A double that holds a float is equal to it, minus zero too.
                TestMesh.SoupOf(scan).ShouldBe(m.Soup);
                scan.Points.ShouldBe(m.Soup.Distinct());
            }
        }, iter: 200);
    }

    [Theory]
    [InlineData(LengthUnit.Millimetre, 1)]
    [InlineData(LengthUnit.Centimetre, 10)]
    [InlineData(LengthUnit.Metre, 1000)]
    [InlineData(LengthUnit.Inch, 25.4)]
    [InlineData(LengthUnit.Foot, 304.8)]
    public void A_unit_scales_the_scan(LengthUnit unit, double mm)
    {
        ScanClaims claims = Reading.BoxClaims with { Unit = unit, Sizes = [new ScanSize(ScanSide.X, 40 * mm, mm)] };

        foreach (string format in Formats.All.Keys)
        {
            Scan scan = Formats.Read(format, TestMesh.Box, claims).Sound();
            scan.Low.ShouldBe(new Vector3d(-8 * mm, 4 * mm, 1 * mm));
            scan.High.ShouldBe(new Vector3d(32 * mm, 28 * mm, 11 * mm));
        }
    }

    [Fact]
    public void Axis_words_turn_every_file_to_the_same_scan()
    {
        int turns = 0;
        foreach (ScanAxis up in Enum.GetValues<ScanAxis>())
            foreach (ScanAxis forward in Enum.GetValues<ScanAxis>())
            {
                if ((int)up / 2 == (int)forward / 2) continue;
                Vector3d f = Direction(forward), u = Direction(up);
                // The file's author looks along the same box from other axes: forward, left and up times the coordinates.
                TestMesh file = TestMesh.Box.Mapped(p => (f * p.X) + (Vector3d.Cross(u, f) * p.Y) + (u * p.Z));

                Scan scan = Formats.Read("ply-text", file, Reading.BoxClaims with { Up = up, Forward = forward }).Sound();

                TestMesh.SoupOf(scan).ShouldBe(TestMesh.Box.Soup);
                turns++;
            }

        turns.ShouldBe(24);
    }

    [Fact]
    public void Words_and_axes_belong_together()
    {
        ScanAxes.Words.Select(ScanAxes.FromWord).ShouldBe(Enum.GetValues<ScanAxis>().Cast<ScanAxis?>());
        Enum.GetValues<ScanAxis>().Select(a => a.Word()).ShouldBe(ScanAxes.Words);
        ScanAxes.FromWord("z").ShouldBeNull();
    }

    [Fact]
    public void A_shift_is_added_in_the_vehicle_frame()
    {
        var claims = new ScanClaims(LengthUnit.Centimetre, ScanAxis.PlusY, ScanAxis.MinusZ, [new ScanSize(ScanSide.X, 100, 1)]) { Shift = new Vector3d(100, -200, 300) };

        Scan scan = Formats.Read("stl-binary", TestMesh.Box, claims).Sound();

        // Forward is -z (1..11 cm), left is y x -z = -x (-8..32 cm), up is y (4..28 cm).
        scan.Low.ShouldBe(new Vector3d(-110 + 100, -320 - 200, 40 + 300));
        scan.High.ShouldBe(new Vector3d(-10 + 100, 80 - 200, 280 + 300));
    }

    private static double Longest(TestMesh mesh) =>
        Enumerable.Range(0, 3).Max(axis => mesh.Soup.Max(p => p[axis]) - mesh.Soup.Min(p => p[axis]));

    private static Vector3d Direction(ScanAxis axis) => axis switch
    {
        ScanAxis.PlusX => new(1, 0, 0),
        ScanAxis.MinusX => new(-1, 0, 0),
        ScanAxis.PlusY => new(0, 1, 0),
        ScanAxis.MinusY => new(0, -1, 0),
        ScanAxis.PlusZ => new(0, 0, 1),
        _ => new(0, 0, -1),
    };
}
