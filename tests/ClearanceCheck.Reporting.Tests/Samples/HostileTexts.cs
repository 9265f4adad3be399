using System.Collections.Immutable;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>Texts that somebody types to break a page, a template, a terminal or a table.</summary>
internal static class HostileTexts
{
    public static ImmutableArray<string> All { get; } =
    [
        "<script>window.hit=1</script>", "<img src=x onerror=\"window.hit=1\">", "\"><svg onload=window.hit=1>", "' onmouseover='window.hit=1", "</style><script>window.hit=1</script>",
        "</title><script>window.hit=1</script>", "</template><script>window.hit=1</script>", "<!-- <script>", "--><script>window.hit=1</script>", "]]><b>bold</b>",
        "<iframe src=\"https://example.invalid\">", "<a href=\"javascript:window.hit=1\">x</a>", "javascript:window.hit=1", "<base href=\"https://example.invalid/\">", "<meta http-equiv=\"refresh\" content=\"0\">",
        "<style>*{display:none}</style>", "<link rel=stylesheet href=x>", "&lt;b&gt;", "&amp;&#60;b&#62;", "&nbsp&copy",
        "{{ 7 * 7 }}", "{{ for i in 1..1000000 }}x{{ end }}", "{{ include 'page' }}", "{%{ raw }%}", "{{ policy = 'x' }}",
        "%}{% raw %}", "${7*7}", "#{7*7}", "@(7*7)", "\u202Edehsinif\u202C",
        "\u2066left\u2069 right", "\u200Bzero\u200Dwidth\uFEFF", "a\u0000b", "\u001B[31mred\u001B[0m", "\u009B31m",
        "\u0007bell\bback", "line one\r\nline two\tcolumn", "\u2028separator\u2029", "\uD800lone", "lone\uDC00",
        "\U000E0041\U000E0042tags", "\uE000private", "\U0001F6FB pickup", "e\u0301\u0301\u0301\u0301\u0301", "\u05D0\u05D1\u05D2 12 mm",
        "=HYPERLINK(\"https://example.invalid\",\"x\")", "+cmd|' /C calc'!A0", "@SUM(1)", "x'; DROP TABLE parts;--", "../../etc/passwd",
        new string('M', 10_000), new string('<', 10_000), "", "   ",
    ];
}
