using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting;

/// <summary>What of the rules a result tells.</summary>
internal static class LibraryCards
{
    public static LibraryCard Of(RuleLibrary library) => new(library.Name, library.Version, library.Hash, library.Rules.Length, library.NotLoaded)
    {
        Layers = [.. library.Layers.Select(l => new LayerCard(l.Name, l.Version, l.IsOverlay, l.Hash))],
        Changes = [.. library.Changes.Where(c => Kind(c.Kind) is not null).Select(Card)],
    };

    private static RuleChangeCard Card(RuleChange change) => new(
        change.Rule, change.Title, Kind(change.Kind)!, change.Looser, change.Because, change.By, change.Until?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), change.Layer, change.Place);

    // Tightening and rules of a shop's own ask for more: nobody has to be told of them here.
    private static string? Kind(RuleChangeKind kind) => kind switch
    {
        RuleChangeKind.Loosened => "loosened",
        RuleChangeKind.SwitchedOff => "switched-off",
        RuleChangeKind.Expired => "expired",
        _ => null,
    };
}
