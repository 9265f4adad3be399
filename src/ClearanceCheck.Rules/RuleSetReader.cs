using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules.Layers;
using ClearanceCheck.Rules.Loading;

namespace ClearanceCheck.Rules;

/// <summary>Reads a library and the overlays on it into the rules that count. A faulty rule or change is reported and left out; the others still load.</summary>
public static class RuleSetReader
{
    /// <summary>Reads layers of rules.</summary>
    /// <param name="layers">The files of each layer, a library first or overlays alone; each overlay after what it stands on.</param>
    /// <param name="carried">The library that overlays alone stand on; none where a library is among the layers.</param>
    /// <param name="quantities">What rules can limit.</param>
    /// <param name="today">The day of the inspection; null counts every dated change as past its day.</param>
    /// <returns>
    /// The rules, with a sentence in <see cref="RuleLibrary.NotLoaded"/> for each rule or change that was left out; null when a file can't be
    /// read, a header is unusable, a layer does not fit on what it stands on, or a fault stands outside every rule. Each fault with its place is among the diagnostics.
    /// </returns>
    public static (RuleLibrary? Library, DiagnosticBag Diagnostics) Read(
        IReadOnlyList<IReadOnlyList<RuleFile>> layers, IReadOnlyList<RuleFile> carried, QuantityCatalogue quantities, DateOnly? today)
    {
        var diagnostics = new DiagnosticBag();
        List<LayerFiles> read = [.. layers.Select(LayerFiles.Parse)];
        if (carried.Count > 0 && read.TrueForAll(l => l.IsOverlay)) read.Insert(0, LayerFiles.Parse(carried));
        if (read.TrueForAll(l => l.Files.IsEmpty)) diagnostics.Add(RuleMessages.NoFiles());
        var rules = new RuleReader(quantities);
        // A library anywhere in the list is what the overlays stand on; overlays keep their order.
        LayerFiles? bottom = read.Find(l => !l.IsOverlay);
        LayeredRules? counting = bottom is null ? null : LibraryLayer.Read(bottom, rules, diagnostics);
        if (bottom is null && read.Count > 0) OverlayMessages.NothingBelow(diagnostics, read[0]);
        foreach (LayerFiles second in read.Where(l => !l.IsOverlay && l != bottom))
        {
            OverlayMessages.SecondLibrary(diagnostics, second);
            counting = null;
        }

        List<OverlayHeader?> above = [.. read.Where(l => l.IsOverlay).Select(l => OverlayLayer.Header(l, diagnostics))];
        if (above.Contains(null) || counting is null || !LayerOrder.Fits(counting.Layers[0], [.. above.Select(h => h!)], diagnostics)) return (null, diagnostics);
        foreach (OverlayHeader header in above.Select(h => h!)) OverlayLayer.Apply(header, counting, rules, today, diagnostics);
        RuleLibrary library = counting.ToLibrary();
        foreach (Diagnostic note in Redundancy.Notes(counting, rules)) diagnostics.Add(note);
        return (library, diagnostics);
    }
}
