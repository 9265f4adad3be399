using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>How to read the numbers, and what the model leaves out.</summary>
public sealed class MethodSection : ReportSection
{
    public override string Name => "method";

    public override string Title => "How to read this, and what it leaves out";

    public override ScriptObject View(ReportContext context) => new()
    {
        ["severities"] = new ScriptArray(Enum.GetValues<Severity>().Reverse().Select(severity => new ScriptObject
        {
            ["word"] = ReportWords.Severity(severity),
            ["sign"] = Drawings.SeveritySign.Of(severity),
            ["name"] = MachineWords.Of(severity),
            ["meaning"] = ReportWords.SeverityMeaning(severity),
        })),
    };
}
