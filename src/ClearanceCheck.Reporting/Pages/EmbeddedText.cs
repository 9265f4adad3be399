namespace ClearanceCheck.Reporting.Pages;

/// <summary>Texts that the program carries in itself: templates, the style sheet, schemas.</summary>
internal static class EmbeddedText
{
    /// <summary>The template of a name, such as <c>reach</c>.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static string Template(string name) => Read($"reports/{name}.sbn-html");

    /// <summary>A carried text with line ends as <c>\n</c>, whatever they were where the program was built.</summary>
    /// <exception cref="ArgumentException">There is none of this name.</exception>
    public static string Read(string name)
    {
        using Stream? stream = typeof(EmbeddedText).Assembly.GetManifestResourceStream(name);
        if (stream is null) throw new ArgumentException($"The program carries no text named '{name}'.", nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
