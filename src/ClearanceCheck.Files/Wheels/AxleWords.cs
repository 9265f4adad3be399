namespace ClearanceCheck.Files.Wheels;

/// <summary>Names of parts that an axle makes.</summary>
internal static class AxleWords
{
    /// <summary>"Rear left tire" for <c>rear</c> and <c>left-tire</c>.</summary>
    public static string Name(string axle, string part)
    {
        string words = $"{axle} {part}".Replace('-', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
