namespace ClearanceCheck.Documents.Yaml;

/// <summary>Finds tabs used for indentation before the parser does, which marks them at the wrong place or lets them pass.</summary>
internal static class TabIndent
{
    public static Diagnostic? Find(SourceText source)
    {
        int? first = null;
        var more = 0;
        for (var line = 1; line <= source.LineCount; line++)
        {
            if (TabOf(source, line) is not { } tab) continue;
            if (first is null) first = tab;
            else more++;
        }

        return first is { } at ? DocumentMessages.TabIndent(source.Span(at, at + 1), more) : null;
    }

    private static int? TabOf(SourceText source, int line)
    {
        var end = source.EndOf(line);
        int? tab = null;
        for (var i = source.StartOf(line); i < end; i++)
        {
            if (source.Text[i] == '\t') tab ??= i;
            else if (source.Text[i] != ' ') return source.Text[i] == '#' ? null : tab;
        }

        return null;
    }
}
