using System.Globalization;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>What the report was made from: the same input gives the same file.</summary>
public sealed class ProvenanceSection : ReportSection
{
    public override string Name => "provenance";

    public override string Title => "Where this report comes from";

    public override ScriptObject View(ReportContext context)
    {
        Provenance provenance = context.Result.Provenance;
        LibraryCard library = context.Result.Library;
        return new ScriptObject
        {
            ["report_id"] = VisibleText.Typed(provenance.ReportId),
            ["version"] = VisibleText.Typed(provenance.ProgramVersion),
            ["library"] = VisibleText.Typed(library.Name),
            ["library_version"] = VisibleText.Typed(library.Version),
            ["library_hash"] = VisibleText.Typed(library.Hash),
            ["layers"] = new ScriptArray(library.Layers.Length < 2 ? [] : library.Layers.Select(layer => VisibleText.Typed($"{layer.Name} {layer.Version}, SHA-256 {layer.Hash}"))),
            ["changes"] = new ScriptArray(library.Changes.Select(change => VisibleText.Sentence(RuleChangeWords.Of(change)))),
            ["inputs"] = new ScriptArray(provenance.Inputs.Select(input => new ScriptObject
            {
                ["name"] = VisibleText.Typed(input.Name),
                ["bytes"] = input.Bytes.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' '),
                ["sha"] = VisibleText.Typed(input.Sha256),
            })),
            ["settings"] = new ScriptArray(provenance.Settings.Select(setting => new ScriptObject
            {
                ["name"] = VisibleText.Typed(setting.Name),
                ["value"] = VisibleText.Typed(setting.Value),
            })),
            ["cells"] = provenance.Cells,
            ["solves"] = provenance.Solves,
            ["pairs_asked"] = provenance.PairsAsked,
            ["pairs_refused"] = provenance.PairsRefusedAtRoot,
        };
    }
}
