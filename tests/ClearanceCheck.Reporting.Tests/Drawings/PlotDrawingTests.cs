using AngleSharp.Dom;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests.Drawings;

public sealed class PlotDrawingTests
{
    private static readonly Finding Sample = SampleFindings.LineNearTailpipe();

    [Fact]
    public void The_worst_place_stands_under_the_limit_that_it_misses()
    {
        IElement plot = Plot(Sample);

        PartDrawingTests.Number(plot.QuerySelector(".worst")!, "cy").ShouldBeGreaterThan(PartDrawingTests.Number(plot.QuerySelector(".limit")!, "y1") + 10);
        plot.TextContent.ShouldContain("limit 50 mm");
        plot.TextContent.ShouldContain("worst at 88 mm");
        plot.TextContent.ShouldContain("ride height");
    }

    [Fact]
    public void A_stretch_beyond_a_stop_is_shaded_up_to_half_way_to_where_it_can_be_reached()
    {
        IHtmlCollection<IElement> shaded = Plot(Sample).QuerySelectorAll(".unreachable");

        // Coordinates -120 to 120 on 46 to 312; reachable from -112 to 88; points every 8 mm.
        shaded.Length.ShouldBe(2);
        PartDrawingTests.Number(shaded[0], "x").ShouldBe(46, 0.1);
        PartDrawingTests.Number(shaded[0], "width").ShouldBe(4 / 240.0 * 266, 0.1);
        (PartDrawingTests.Number(shaded[1], "x") + PartDrawingTests.Number(shaded[1], "width")).ShouldBe(312, 0.1);
        PartDrawingTests.Number(shaded[1], "x").ShouldBe(46 + (212 / 240.0 * 266), 0.1);
    }

    [Fact]
    public void The_band_is_twice_the_give_or_take_high()
    {
        IElement plot = Plot(Sample);
        double[] ys = [.. plot.QuerySelector(".band")!.GetAttribute("points")!.Split(' ').Select(p => double.Parse(p.Split(',')[1], System.Globalization.CultureInfo.InvariantCulture))];
        double unitsPerMm = (PartDrawingTests.Number(plot.QuerySelector(".worst")!, "cy") - PartDrawingTests.Number(plot.QuerySelector(".limit")!, "y1")) / (50 - 18.2);

        ((ys[^1] - ys[0]) / unitsPerMm).ShouldBe(6.2, 0.2);
    }

    [Fact]
    public void Steering_is_named_from_straight_ahead_and_has_no_ride_height()
    {
        PlotCard steer = Sample.Evidence!.Plots[0] with { Coordinate = "front.steer", Label = "steering", Unit = "deg", At = 20 };

        string text = PartDrawingTests.Svg(PlotDrawing.Draw(steer, Sample, Sample.Evidence!).Markup).TextContent;

        text.ShouldContain("straight ahead");
        text.ShouldNotContain("ride height");
        text.ShouldNotContain("droop");
    }

    [Fact]
    public void A_flat_curve_on_its_limit_is_drawn_without_a_hole()
    {
        PlotCard flat = Sample.Evidence!.Plots[0] with { Points = [new PlotPoint(0, 50, true), new PlotPoint(10, 50, true)] };

        string markup = PlotDrawing.Draw(flat, Sample, Sample.Evidence! with { Value = 50, StandardUncertainty = 0 }).Markup;

        markup.ShouldContain("class=\"curve\"");
        markup.ShouldNotContain("NaN");
    }

    private static IElement Plot(Finding finding) => PartDrawingTests.Svg(PlotDrawing.Draw(finding.Evidence!.Plots[0], finding, finding.Evidence!).Markup);
}
