using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules.Layers;

/// <summary>Whether each overlay finds what it stands on below it.</summary>
internal static class LayerOrder
{
    /// <summary>True when every overlay fits; else it has been said which does not and why.</summary>
    public static bool Fits(RuleLayer bottom, ImmutableArray<OverlayHeader> overlays, DiagnosticBag diagnostics)
    {
        bool fits = true;
        List<RuleLayer> below = [bottom];
        foreach (OverlayHeader overlay in overlays)
        {
            if (below.Exists(l => l.Name == overlay.Name.Value))
            {
                OverlayMessages.SameName(diagnostics, overlay);
                fits = false;
            }

            if (below.Find(l => l.Name == overlay.On.Value) is { } found) fits &= HasVersion(found, overlay, diagnostics);
            else
            {
                Missing(overlay, overlays, below, diagnostics);
                fits = false;
            }

            below.Add(overlay.Card);
        }

        return fits;
    }

    private static bool HasVersion(RuleLayer found, OverlayHeader overlay, DiagnosticBag diagnostics)
    {
        VersionNumber version = VersionNumber.Parse(found.Version)!.Value;
        if (version.CompareTo(overlay.From) >= 0 && version.CompareTo(overlay.Before) < 0) return true;
        OverlayMessages.OtherVersion(diagnostics, overlay, found);
        return false;
    }

    private static void Missing(OverlayHeader overlay, ImmutableArray<OverlayHeader> overlays, List<RuleLayer> below, DiagnosticBag diagnostics)
    {
        if (Circle(overlay, overlays) is { Length: > 0 } circle) OverlayMessages.StandsOnItself(diagnostics, overlay, circle);
        else if (overlays.Any(o => o.Name.Value == overlay.On.Value)) OverlayMessages.ComesLater(diagnostics, overlay);
        else OverlayMessages.NoSuchLayer(diagnostics, overlay, below.Select(l => l.Name));
    }

    // The names from the overlay around to itself; empty when the way down ends.
    private static ImmutableArray<string> Circle(OverlayHeader from, ImmutableArray<OverlayHeader> overlays)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        OverlayHeader? at = from;
        while (at is not null && !names.Contains(at.Name.Value))
        {
            names.Add(at.Name.Value);
            at = overlays.FirstOrDefault(o => o.Name.Value == at.On.Value);
        }

        if (at?.Name.Value != from.Name.Value) return [];
        names.Add(from.Name.Value);
        return names.ToImmutable();
    }
}
