using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>Safety signs of our own drawing, in the manner of ANSI Z535 and ISO 3864: a triangle that warns, a square that informs.</summary>
/// <remarks>Each severity has its own shape, so that a grey print tells them apart: filled, thick line, thin line, square.</remarks>
internal static class SeveritySign
{
    public static RawHtml Of(Severity severity) => severity switch
    {
        Severity.Danger => Sign("<path class=\"sign-solid\" d=\"M20 3 38 36H2Z\"/><path class=\"sign-cut\" d=\"M18 14h4l-.8 11h-2.4Z\"/><circle class=\"sign-cut\" cx=\"20\" cy=\"29.5\" r=\"2.3\"/>"),
        Severity.Warning => Sign("<path class=\"sign-thick\" d=\"M20 6 35.5 34.5H4.5Z\"/><path class=\"sign-solid\" d=\"M18 15h4l-.8 10h-2.4Z\"/><circle class=\"sign-solid\" cx=\"20\" cy=\"29\" r=\"2.2\"/>"),
        Severity.Caution => Sign("<path class=\"sign-thin\" d=\"M20 5 37 35H3Z\"/><path class=\"sign-solid\" d=\"M18.5 15h3l-.6 10h-1.8Z\"/><circle class=\"sign-solid\" cx=\"20\" cy=\"29\" r=\"1.8\"/>"),
        Severity.Notice => Sign("<rect class=\"sign-thin\" x=\"5\" y=\"5\" width=\"30\" height=\"30\"/><circle class=\"sign-solid\" cx=\"20\" cy=\"12.5\" r=\"2.4\"/><path class=\"sign-solid\" d=\"M18 17.5h4v12h-4Z\"/>"),
        _ => throw new ArgumentOutOfRangeException(nameof(severity)),
    };

    private static RawHtml Sign(string shapes) => new($"<svg class=\"sign\" viewBox=\"0 0 40 40\" aria-hidden=\"true\" focusable=\"false\">{shapes}</svg>");
}
