namespace ClearanceCheck.Documents;

/// <summary>How much of a file is read at most.</summary>
public static class DocumentLimits
{
    /// <summary>Characters, or bytes, of one file.</summary>
    public const int MostText = 2 * 1024 * 1024;

    /// <summary>Levels of nesting.</summary>
    public const int MostDepth = 40;

    /// <summary>Keys, values, lists and maps of one YAML file.</summary>
    public const int MostNodes = 20_000;

    /// <summary>Rows of one CSV file.</summary>
    public const int MostRows = 20_000;

    /// <summary>Characters of a text that are kept.</summary>
    public const int MostShownText = 200;
}
