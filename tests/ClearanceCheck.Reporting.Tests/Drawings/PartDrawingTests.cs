using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Tests.Samples;
using CsCheck;

namespace ClearanceCheck.Reporting.Tests.Drawings;

public sealed class PartDrawingTests
{
    private static readonly Gen<Vector3d> Vectors = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[-500, 500]).Select((x, y, z) => new Vector3d(x, y, z));

    [Fact]
    public void The_eye_is_square_to_the_gap_and_the_page_is_a_right_handed_frame() =>
        Gen.Select(Vectors, Vectors, Vectors, Vectors).Sample((a, b, first, second) =>
        {
            // Nearer than a micrometre the parts touch and there is no direction to be square to.
            if ((b - a).Length < 1e-3) return true;
            ViewPlane plane = ViewPlane.Choose(Between(a, b, first, second));
            (double right, double up) = plane.Project(b - a);

            return Math.Abs(Vector3d.Dot(plane.Toward, b - a)) < 1e-6 * (b - a).Length
                && Math.Abs(Math.Sqrt((right * right) + (up * up)) - (b - a).Length) < 1e-6
                && (Vector3d.Cross(plane.Right, plane.Up) - plane.Toward).Length < 1e-9;
        });

    [Fact]
    public void A_pipe_above_a_line_is_seen_from_the_left_with_forward_to_the_left()
    {
        ViewPlane plane = ViewPlane.Choose(Between(new Vector3d(0, 400, 600), new Vector3d(0, 400, 650), Vector3d.UnitX, Vector3d.UnitX));

        plane.Toward.ShouldBe(Vector3d.UnitY);
        plane.Up.ShouldBe(Vector3d.UnitZ);
        plane.Right.ShouldBe(-Vector3d.UnitX);
        plane.Words.ShouldBe("Seen from the left");
    }

    [Fact]
    public void Parts_that_run_across_are_not_seen_end_on()
    {
        ViewPlane plane = ViewPlane.Choose(Between(Vector3d.Zero, new Vector3d(0, 0, 50), Vector3d.UnitX, Vector3d.UnitY));

        Vector3d.Cross(plane.Toward, Vector3d.UnitX).Length.ShouldBeGreaterThan(0.5);
        Vector3d.Cross(plane.Toward, Vector3d.UnitY).Length.ShouldBeGreaterThan(0.5);
    }

    [Fact]
    public void Parts_that_touch_in_one_point_are_still_drawn()
    {
        Evidence evidence = SampleFindings.LineNearTailpipe().Evidence!;

        PartDrawing.Draw(SampleFindings.LineNearTailpipe(), evidence with { WitnessSecond = evidence.WitnessFirst })!.Markup.ShouldNotContain("NaN");
    }

    [Fact]
    public void Gap_thickness_and_scale_bar_have_one_scale()
    {
        IElement drawing = Svg(PartDrawing.Draw(SampleFindings.LineNearTailpipe(), SampleFindings.LineNearTailpipe().Evidence!)!.Markup);
        IElement bar = drawing.QuerySelector(".bar")!;
        double unitsPerMm = Math.Abs(Number(bar, "x2") - Number(bar, "x1")) / 50;

        IElement gap = drawing.QuerySelector(".dimension")!;
        double length = Math.Sqrt(Square(Number(gap, "x2") - Number(gap, "x1")) + Square(Number(gap, "y2") - Number(gap, "y1")));
        IHtmlCollection<IElement> edges = drawing.QuerySelectorAll(".part-edge");

        (length / unitsPerMm).ShouldBe(18.2, 0.2);
        (Number(edges[0], "stroke-width") / unitsPerMm).ShouldBe(63.5, 0.2);
        drawing.QuerySelector(".dimension-text")!.TextContent.ShouldBe("18 mm");
    }

    [Fact]
    public void The_two_parts_are_hatched_differently_and_lettered()
    {
        IElement drawing = Svg(PartDrawing.Draw(SampleFindings.LineNearTailpipe(), SampleFindings.LineNearTailpipe().Evidence!)!.Markup);

        drawing.QuerySelectorAll(".part-first").Length.ShouldBe(1);
        drawing.QuerySelectorAll(".part-second").Length.ShouldBe(1);
        drawing.QuerySelectorAll(".letter").Select(l => l.TextContent).ShouldBe(["A", "B"]);
        drawing.TextContent.ShouldContain("forward");
        drawing.TextContent.ShouldContain("up");
    }

    [Fact]
    public void A_hose_is_drawn_whole_with_its_straight_line_dashed()
    {
        Finding finding = SampleFindings.HoseTooShort();
        IElement drawing = Svg(PartDrawing.Draw(finding, finding.Evidence!)!.Markup);

        drawing.QuerySelectorAll(".straight").Length.ShouldBe(1);
        drawing.QuerySelector(".dimension-text")!.TextContent.ShouldStartWith("ends ");
        foreach (string pair in drawing.QuerySelector(".part-first")!.GetAttribute("points")!.Split(' '))
        {
            double[] at = [.. pair.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
            at[0].ShouldBeInRange(0, 320);
            at[1].ShouldBeInRange(0, 240);
        }
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(0.3, 0, 1)]
    [InlineData(0, 1, 0.2)]
    public void The_length_between_a_hoses_ends_is_never_cut_off_at_the_side(double x, double y, double z)
    {
        Finding finding = SampleFindings.HoseTooShort();
        Vector3d from = new(-482, 112, -120), to = from - (new Vector3d(x, y, z) * 270);
        var hose = new DrawnPart(finding.Parts[0].Id, [from, to], 5, true);
        Evidence evidence = finding.Evidence! with { WitnessFirst = from, WitnessSecond = to, Drawing = new DrawingCard([hose]) };

        IElement text = Svg(PartDrawing.Draw(finding, evidence)!.Markup).QuerySelector(".dimension-text")!;

        // Bold letters of the drawing are at most 13 units wide; the window is 320.
        double half = 6.5 * text.TextContent.Length;
        Number(text, "x").ShouldBeInRange(half, 320 - half);
    }

    [Fact]
    public void A_straight_line_that_stands_for_a_hose_beside_another_part_still_shows_the_gap()
    {
        Finding finding = SampleFindings.LineNearTailpipe();
        DrawnPart[] parts = [.. finding.Evidence!.Drawing.Parts];
        Evidence evidence = finding.Evidence with { Drawing = new DrawingCard([parts[0] with { Dashed = true }, parts[1]]) };

        IElement drawing = Svg(PartDrawing.Draw(finding, evidence)!.Markup);

        drawing.QuerySelector(".dimension-text")!.TextContent.ShouldBe("18 mm");
        drawing.QuerySelectorAll(".straight").Length.ShouldBe(1);
    }

    [Fact]
    public void Nothing_to_draw_makes_no_drawing()
    {
        Evidence evidence = SampleFindings.LineNearTailpipe().Evidence! with { Drawing = new DrawingCard([]) };

        PartDrawing.Draw(SampleFindings.LineNearTailpipe(), evidence).ShouldBeNull();
        HtmlReport.Write(SampleResult.Small() with { Findings = [SampleFindings.LineNearTailpipe() with { Evidence = evidence }] }).ShouldNotContain("<svg class=\"drawing\"");
    }

    [Theory]
    [InlineData(0.004, 0.002)]
    [InlineData(1, 1)]
    [InlineData(4.9, 2)]
    [InlineData(70, 50)]
    [InlineData(130, 100)]
    public void A_bar_is_a_round_number_not_longer_than_asked(double wanted, double round) => NiceStep.AtMost(wanted).ShouldBe(round, 1e-9);

    internal static IElement Svg(string markup) => new HtmlParser().ParseDocument(markup).QuerySelector("svg")!;

    internal static double Number(IElement element, string name) => double.Parse(element.GetAttribute(name)!, CultureInfo.InvariantCulture);

    private static double Square(double x) => x * x;

    private static Evidence Between(Vector3d a, Vector3d b, Vector3d first, Vector3d second) => SampleFindings.LineNearTailpipe().Evidence! with
    {
        WitnessFirst = a,
        WitnessSecond = b,
        Drawing = new DrawingCard([new DrawnPart("first", [a - first, a + first], 5, false), new DrawnPart("second", [b - second, b + second], 5, false)]),
    };
}
