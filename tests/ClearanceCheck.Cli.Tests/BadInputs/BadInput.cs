namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Something that a person may hand in, and what they get for it: the expected text is <c>Expectations/bad-ROW-NAME.txt</c>.</summary>
/// <param name="Row">The row of the list of bad inputs.</param>
/// <param name="Name">What is wrong.</param>
/// <param name="Spoil">Makes it so in a workshop with the smallest inspection.</param>
/// <param name="Shows">What of a whole run is shown beside what was said and the status; null where nothing is.</param>
internal sealed record BadInput(int Row, string Name, Action<Workshop> Spoil, Func<Workshop, string>? Shows = null)
{
    public string Golden => FormattableString.Invariant($"bad-{Row:00}-{Name}");

    /// <summary>What follows <c>inspect inspection.yaml</c>.</summary>
    public string[] Options { get; init; } = [];

    /// <summary>A row whose input is the inspection file with one stretch changed.</summary>
    public static BadInput Changed(int row, string name, string from, string to) => new(row, name, s => s.Change("inspection.yaml", from, to));

    /// <summary>A row whose input is the whole file.</summary>
    public static BadInput Whole(int row, string name, byte[] content) => new(row, name, s => File.WriteAllBytes(s.At("inspection.yaml"), content));
}
