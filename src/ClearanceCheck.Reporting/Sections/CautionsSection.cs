using ClearanceCheck.Reporting.Pages;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>All cautions together; those that matter to a finding stand there as well.</summary>
public sealed class CautionsSection : ReportSection
{
    public override string Name => "cautions";

    public override string Title => "Cautions";

    public override ScriptObject View(ReportContext context) => new()
    {
        ["work"] = new ScriptArray(CautionCatalogue.AtWork.Select(c => c.Text)),
        ["drive"] = new ScriptArray(CautionCatalogue.FirstDrive.Select(c => c.Text)),
    };
}
