using System.Collections.Immutable;

namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>What people hand in that can't be used as it is, by the rows of the list of bad inputs.</summary>
internal static partial class BadInputs
{
    /// <summary>Rows of the list that nothing can be handed in for yet, and what they wait for.</summary>
    public static ImmutableSortedDictionary<int, string> Waiting { get; } = ImmutableSortedDictionary.CreateRange(
    [
        KeyValuePair.Create(14, "No key of the file is a temperature until heat is estimated; the reading of one is tested where it lives, in Units and Documents."),
    ]);

    public const int LastRow = 30;

    public static ImmutableArray<BadInput> All { get; } = [.. Text.Concat(Values).Concat(OfVehicle).Concat(Beside).OrderBy(b => b.Row)];
}
