using AngleSharp.Dom;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests.Drawings;

/// <summary>Drawings of parts that are not thick line: tires, plates, boxes, scans.</summary>
public sealed class ShapeDrawingTests
{
    [Theory]
    [InlineData(18, "18 mm")]
    [InlineData(140, "140 mm")]
    [InlineData(0.8, "1 mm")]
    public void A_tire_and_a_plate_apart_show_their_gap_to_scale_with_nothing_in_it(double gap, string label)
    {
        Finding finding = SampleFindings.TireNearFender(gap);
        IElement drawing = Drawn(finding);
        (PagePoint first, PagePoint second) = Dimension(drawing);

        ((second - first).Length / UnitsPerMm(drawing)).ShouldBe(gap, 0.1 / UnitsPerMm(drawing) + (0.01 * gap));
        drawing.QuerySelectorAll(".dimension-text").Select(t => t.TextContent).ShouldBe([label]);
        DrawnPath[] parts = Fills(drawing);
        PagePoint middle = (first + second) * 0.5;
        parts.ShouldAllBe(p => p.Winding(middle) == 0);
        parts.Single(p => p.Corners.Any(c => c.Y > 200)).Winding(middle + new PagePoint(0, (0.5 * gap * UnitsPerMm(drawing)) + 3)).ShouldBeGreaterThan(0);
    }

    [Fact]
    public void An_overlap_is_where_both_silhouettes_are_with_arrows_from_outside()
    {
        IElement drawing = Drawn(SampleFindings.TireNearFender(-12));
        (PagePoint first, PagePoint second) = Dimension(drawing);
        double unitsPerMm = UnitsPerMm(drawing);

        ((second - first).Length / unitsPerMm).ShouldBe(12, 0.2);
        drawing.QuerySelectorAll(".dimension-text").Select(t => t.TextContent).ShouldBe(["overlap 12 mm", "at least"]);
        // The plate lies in the tire: the tire's top is above the plate's lower side.
        first.Y.ShouldBeLessThan(second.Y);
        // The arrows' tails lie on the outer sides of the two ticks.
        double[] tails = [.. drawing.QuerySelectorAll("polygon.arrow").Take(2).Select(a => Points(a).Average(p => p.Y))];
        tails.Min().ShouldBeLessThan(first.Y);
        tails.Max().ShouldBeGreaterThan(second.Y);
    }

    [Fact]
    public void A_deep_overlap_has_its_arrows_outside_too()
    {
        IElement drawing = Drawn(SampleFindings.TireNearFender(-90));
        (PagePoint first, PagePoint second) = Dimension(drawing);

        (second - first).Length.ShouldBeGreaterThan(40);
        double[] tails = [.. drawing.QuerySelectorAll("polygon.arrow").Take(2).Select(a => Points(a).Average(p => p.Y))];
        tails.Min().ShouldBeLessThan(Math.Min(first.Y, second.Y));
        tails.Max().ShouldBeGreaterThan(Math.Max(first.Y, second.Y));
    }

    [Fact]
    public void Parts_that_touch_are_seen_with_the_touching_faces_edge_on()
    {
        Finding finding = SampleFindings.TireNearFender(0);

        ViewPlane plane = ViewPlane.Choose(finding.Evidence!);

        plane.Across.ShouldBe(Vector3d.UnitZ);
        Vector3d.Dot(plane.Toward, Vector3d.UnitZ).ShouldBe(0, 1e-12);
        Drawn(finding).QuerySelector(".dimension-text")!.TextContent.ShouldBe("0 mm");
    }

    [Fact]
    public void A_part_is_one_shape_its_edge_before_its_hatching_and_the_second_part_under_the_first()
    {
        IElement drawing = Drawn(SampleFindings.TireNearFender(18));

        drawing.QuerySelectorAll("path").Select(p => p.ClassName).ShouldBe(["part-edge piece", "part-second piece", "part-edge piece", "part-first piece"]);
        foreach (IElement[] layers in drawing.QuerySelectorAll("path").Chunk(2))
        {
            layers[0].GetAttribute("d").ShouldBe(layers[1].GetAttribute("d"));
            (PartDrawingTests.Number(layers[0], "stroke-width") - PartDrawingTests.Number(layers[1], "stroke-width")).ShouldBe(3, 1e-9);
        }
    }

    [Fact]
    public void A_plates_edge_is_as_thick_as_the_plate()
    {
        IElement drawing = Drawn(SampleFindings.TireNearFender(2));

        PartDrawingTests.Number(drawing.QuerySelector(".part-edge")!, "stroke-width").ShouldBe(3 * UnitsPerMm(drawing), 0.1);
    }

    [Fact]
    public void A_part_of_a_chain_and_pieces_is_drawn_with_both_the_edges_first()
    {
        Finding finding = SampleFindings.TireNearFender(18);
        DrawnPart[] parts = [.. finding.Evidence!.Drawing.Parts];
        DrawnPart mixed = parts[1] with { Points = [new Vector3d(-1600, 700, 850), new Vector3d(-1400, 800, 860)], RadiusMm = 6 };

        IElement drawing = Drawn(finding with { Evidence = finding.Evidence with { Drawing = new DrawingCard([parts[0], mixed]) } });

        drawing.QuerySelectorAll("path, polyline").Take(4).Select(e => e.LocalName + " " + e.ClassName)
            .ShouldBe(["path part-edge piece", "polyline part-edge", "path part-second piece", "polyline part-second"]);
    }

    [Fact]
    public void A_mesh_stays_small_and_the_same_from_run_to_run()
    {
        string markup = PartDrawing.Draw(SampleFindings.LumpNearPipe(), SampleFindings.LumpNearPipe().Evidence!)!.Markup;

        SampleFindings.LumpNearPipe().Evidence!.Drawing.Parts[0].Pieces.Length.ShouldBeGreaterThan(200);
        markup.Length.ShouldBeLessThan(16_000);
        PartDrawing.Draw(SampleFindings.LumpNearPipe(), SampleFindings.LumpNearPipe().Evidence!)!.Markup.ShouldBe(markup);
    }

    [Fact]
    public void A_box_with_a_turned_face_beside_a_line_is_seen_along_that_face()
    {
        IElement drawing = Drawn(SampleFindings.BoxNearLine());
        (PagePoint first, PagePoint second) = Dimension(drawing);
        DrawnPath box = Fills(drawing).ShouldHaveSingleItem();
        PagePoint inward = (second - first).UnitOr(default);

        ((second - first).Length / UnitsPerMm(drawing)).ShouldBe(8, 0.1);
        // No corner of the box comes nearer to the line than the face does.
        box.Corners.ShouldAllBe(c => PagePoint.Dot(c - second, inward) > -0.2);
    }

    [Theory]
    [InlineData(0, "Seen from behind")]
    [InlineData(-60, "Seen from the left")]
    public void The_eye_looks_from_where_nothing_hides_the_gap(double screenAt, string words)
    {
        // A block 20 mm over another one; the lower one may carry an ear that stands up before the gap as seen from behind.
        DrawnPart lower = SampleShapes.Box(new Vector3d(-40, -40, -40), Vector3d.UnitX * 80, Vector3d.UnitY * 80, Vector3d.UnitZ * 40);
        DrawnPart ear = SampleShapes.Box(new Vector3d(screenAt, -40, -40), Vector3d.UnitX * 5, Vector3d.UnitY * 80, Vector3d.UnitZ * (screenAt < 0 ? 90 : 40));
        DrawnPart upper = SampleShapes.Box(new Vector3d(-40, -40, 20), Vector3d.UnitX * 80, Vector3d.UnitY * 80, Vector3d.UnitZ * 40);

        ViewPlane.Choose(Between(lower with { Pieces = [.. lower.Pieces, .. ear.Pieces] }, upper, 20)).Words.ShouldBe(words);
    }

    [Theory]
    [InlineData(30, "Seen from behind")]
    [InlineData(300, "Seen from the left")]
    public void A_long_box_is_not_seen_end_on(double length, string words)
    {
        DrawnPart box = SampleShapes.Box(new Vector3d(-length / 2, -15, -30), Vector3d.UnitX * length, Vector3d.UnitY * 30, Vector3d.UnitZ * 30);

        ViewPlane.Choose(Between(box, SampleShapes.Plate(Vector3d.UnitZ * 20, 90, 90), 20)).Words.ShouldBe(words);
    }

    private static Evidence Between(DrawnPart first, DrawnPart second, double gap) => SampleFindings.TireNearFender(gap).Evidence! with
    {
        WitnessFirst = Vector3d.Zero,
        WitnessSecond = Vector3d.UnitZ * gap,
        Drawing = new DrawingCard([first, second]),
    };

    public static TheoryData<string> Degenerate => ["one corner", "one corner without size", "in line with the eye", "all corners alike", "no corners", "no pieces"];

    [Theory]
    [MemberData(nameof(Degenerate))]
    public void A_piece_without_length_or_width_is_drawn_without_a_hole_in_its_numbers(string kind)
    {
        Vector3d at = new(-1500, 770, 838);
        DrawnPiece[] pieces = kind switch
        {
            "one corner" => [new DrawnPiece([at], 4)],
            "one corner without size" => [new DrawnPiece([at], 0)],
            "in line with the eye" => [new DrawnPiece([at, at + Vector3d.UnitX, at + (Vector3d.UnitX * 9)], 0), new DrawnPiece([at, at + Vector3d.UnitY], 0)],
            "all corners alike" => [new DrawnPiece([at, at, at, at], 2)],
            "no corners" => [new DrawnPiece([], 2)],
            _ => [],
        };
        foreach (double gap in new[] { 18.0, 0, -12 })
        {
            Finding finding = SampleFindings.TireNearFender(gap);
            Evidence evidence = finding.Evidence! with { Drawing = new DrawingCard([finding.Evidence.Drawing.Parts[0], new DrawnPart("x", [], 0, false) { Pieces = [.. pieces] }]) };

            string markup = PartDrawing.Draw(finding, evidence)!.Markup;

            markup.ShouldNotContain("NaN");
            markup.ShouldNotContain("∞");
            if (gap > 0 && pieces.Any(p => !p.Corners.IsEmpty)) PartDrawingTests.Svg(markup).QuerySelectorAll(".part-second").Length.ShouldBeGreaterThan(0);
        }
    }

    [Fact]
    public void Two_parts_without_anything_to_draw_make_no_drawing()
    {
        Finding finding = SampleFindings.TireNearFender(18);
        DrawnPart empty = new("x", [], 0, false) { Pieces = [new DrawnPiece([], 2)] };

        PartDrawing.Draw(finding, finding.Evidence! with { Drawing = new DrawingCard([empty, empty]) }).ShouldBeNull();
    }

    [Theory]
    [InlineData(18)]
    [InlineData(0)]
    [InlineData(-12)]
    public void A_letter_stands_on_its_part_and_off_the_dimension(double gap)
    {
        IElement drawing = Drawn(SampleFindings.TireNearFender(gap));
        (PagePoint first, PagePoint second) = Dimension(drawing);

        IElement[] discs = [.. drawing.QuerySelectorAll(".letter-disc")];

        discs.Length.ShouldBe(2);
        foreach (IElement disc in discs)
            new PagePoint(PartDrawingTests.Number(disc, "cx"), PartDrawingTests.Number(disc, "cy")).DistanceTo(first, second).ShouldBeGreaterThan(24);
    }

    private static IElement Drawn(Finding finding) => PartDrawingTests.Svg(PartDrawing.Draw(finding, finding.Evidence!)!.Markup);

    private static DrawnPath[] Fills(IElement drawing) => [.. drawing.QuerySelectorAll("path.part-first, path.part-second").Select(p => new DrawnPath(p.GetAttribute("d")!))];

    private static (PagePoint First, PagePoint Second) Dimension(IElement drawing)
    {
        IElement line = drawing.QuerySelector(".dimension")!;
        return (new PagePoint(PartDrawingTests.Number(line, "x1"), PartDrawingTests.Number(line, "y1")), new PagePoint(PartDrawingTests.Number(line, "x2"), PartDrawingTests.Number(line, "y2")));
    }

    private static double UnitsPerMm(IElement drawing)
    {
        IElement bar = drawing.QuerySelector(".bar")!;
        double mm = double.Parse(drawing.QuerySelectorAll(".drawing-text").First(t => t.TextContent.Contains(" mm", StringComparison.Ordinal)).TextContent.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        return Math.Abs(PartDrawingTests.Number(bar, "x2") - PartDrawingTests.Number(bar, "x1")) / mm;
    }

    private static IEnumerable<PagePoint> Points(IElement polygon) => polygon.GetAttribute("points")!.Split(' ').Select(p =>
    {
        double[] at = [.. p.Split(',').Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];
        return new PagePoint(at[0], at[1]);
    });
}
