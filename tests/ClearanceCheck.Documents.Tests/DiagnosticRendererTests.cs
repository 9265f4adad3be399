using ClearanceCheck.Documents.Yaml;

namespace ClearanceCheck.Documents.Tests;

public sealed class DiagnosticRendererTests
{
    [Fact]
    public void A_long_line_is_cut_around_its_caret()
    {
        var line = new string('a', 300) + "FAULT" + new string('b', 300);
        var span = new SourceText("t.yaml", line).Span(300, 305);

        Golden.Check(
            () => DiagnosticRenderer.Render(Diagnostic.Error("x", span, "Wrong.", "Right.")),
            "t.yaml:1:301: error: Wrong.\n  ..." + new string('a', 33) + "FAULT" + new string('b', 62) + "...\n     " + new string(' ', 33) + "^^^^^\nhelp: Right.");
    }

    [Fact]
    public void Hidden_characters_are_visible_and_the_caret_still_stands_under_the_fault()
    {
        var span = new SourceText("t.yaml", "a\t\u202E\u0007b: FAULT").Span(7, 12);

        Golden.Check(
            () => DiagnosticRenderer.Render(Diagnostic.Error("x", span, "Wrong \u202E.", "Right.")),
            """
            t.yaml:1:8: error: Wrong [U+202E].
              a[tab][U+202E][U+0007]b: FAULT
                                       ^^^^^
            help: Right.
            """);
    }

    [Fact]
    public void The_first_twenty_are_shown_and_the_rest_is_counted()
    {
        var text = string.Concat(Enumerable.Range(0, 27).Select(i => $"k{i}:\n"));
        var diagnostics = new DiagnosticBag();
        YamlText.Read("t.yaml", text, diagnostics);

        var shown = DiagnosticRenderer.Render(diagnostics);

        shown.Split('\n').Count(line => line.Contains(": error: ", StringComparison.Ordinal)).ShouldBe(20);
        shown.ShouldEndWith("\nand 7 more\n");
    }

    [Fact]
    public void Faults_are_ordered_by_file_and_then_by_place()
    {
        var (first, second) = (new SourceText("b.yaml", "xyz"), new SourceText("a.yaml", "xyz"));
        var diagnostics = new DiagnosticBag();
        foreach (var span in new[] { first.Span(2, 3), second.Span(1, 2), first.Span(0, 1), second.Span(0, 1) }) diagnostics.Add(Diagnostic.Error("x", span, "", ""));

        diagnostics.Ordered.Select(item => item.Span.ToString()).ShouldBe(["b.yaml:1:1", "b.yaml:1:3", "a.yaml:1:1", "a.yaml:1:2"]);
    }
}
