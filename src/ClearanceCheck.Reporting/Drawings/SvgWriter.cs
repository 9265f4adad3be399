using System.Globalization;
using System.Net;
using System.Text;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>Writes SVG: numbers to a tenth of a unit, texts encoded, looks by class only since the page's policy forbids style attributes.</summary>
internal sealed class SvgWriter
{
    private readonly StringBuilder markup = new();

    /// <summary>Opens a drawing with a text for those who do not see it.</summary>
    public static SvgWriter Begin(double width, double height, string className, string description)
    {
        SvgWriter writer = new();
        writer.markup.Append(CultureInfo.InvariantCulture, $"<svg class=\"{className}\" viewBox=\"0 0 {Number(width)} {Number(height)}\" role=\"img\" aria-label=\"{Encode(description)}\">");
        return writer;
    }

    public static string Number(double value) => NumberFormat.UpTo(value, 1);

    public RawHtml End() => new(markup.Append("</svg>").ToString());

    /// <summary>Opens a window: nothing drawn until <see cref="CloseWindow"/> shows outside of it.</summary>
    public SvgWriter OpenWindow(double x, double y, double width, double height)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<svg x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(width)}\" height=\"{Number(height)}\" overflow=\"hidden\">");
        return this;
    }

    public SvgWriter CloseWindow()
    {
        markup.Append("</svg>");
        return this;
    }

    public SvgWriter Line(PagePoint from, PagePoint to, string className)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<line class=\"{className}\" x1=\"{Number(from.X)}\" y1=\"{Number(from.Y)}\" x2=\"{Number(to.X)}\" y2=\"{Number(to.Y)}\"/>");
        return this;
    }

    /// <summary>A chain of line; the width is in the drawing's units and left to the style when null.</summary>
    public SvgWriter Chain(IEnumerable<PagePoint> points, string className, double? width = null)
    {
        string widthText = width is { } w ? $" stroke-width=\"{Number(w)}\"" : "";
        markup.Append(CultureInfo.InvariantCulture, $"<polyline class=\"{className}\"{widthText} points=\"{Points(points)}\"/>");
        return this;
    }

    /// <summary>A path in the form that <see cref="OutlinePath"/> writes; the width of its stroke is in the drawing's units.</summary>
    public SvgWriter Path(string path, string className, double width)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<path class=\"{className}\" stroke-width=\"{NumberFormat.UpTo(width, 2)}\" d=\"{path}\"/>");
        return this;
    }

    public SvgWriter OpenGroup(string className)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<g class=\"{className}\">");
        return this;
    }

    public SvgWriter CloseGroup()
    {
        markup.Append("</g>");
        return this;
    }

    public SvgWriter Area(IEnumerable<PagePoint> points, string className)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<polygon class=\"{className}\" points=\"{Points(points)}\"/>");
        return this;
    }

    public SvgWriter Box(double x, double y, double width, double height, string className)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<rect class=\"{className}\" x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(width)}\" height=\"{Number(height)}\"/>");
        return this;
    }

    public SvgWriter Disc(PagePoint at, double radius, string className)
    {
        markup.Append(CultureInfo.InvariantCulture, $"<circle class=\"{className}\" cx=\"{Number(at.X)}\" cy=\"{Number(at.Y)}\" r=\"{Number(radius)}\"/>");
        return this;
    }

    /// <summary>A text; the anchor is <c>start</c>, <c>middle</c> or <c>end</c>.</summary>
    public SvgWriter Text(PagePoint at, string text, string className, string anchor = "start")
    {
        markup.Append(CultureInfo.InvariantCulture, $"<text class=\"{className}\" x=\"{Number(at.X)}\" y=\"{Number(at.Y)}\" text-anchor=\"{anchor}\">{Encode(text)}</text>");
        return this;
    }

    private static string Encode(string text) => WebUtility.HtmlEncode(VisibleText.Typed(text));

    private static string Points(IEnumerable<PagePoint> points) => string.Join(' ', points.Select(p => $"{Number(p.X)},{Number(p.Y)}"));
}
