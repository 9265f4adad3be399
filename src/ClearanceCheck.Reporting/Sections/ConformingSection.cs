using ClearanceCheck.Reporting.Pages;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>What meets its limit: short, but with value, limit and pose, so that each can be checked by hand.</summary>
public sealed class ConformingSection : ReportSection
{
    public override string Name => "conforming";

    public override string Title => "What meets its limit";

    public override ScriptObject? View(ReportContext context) => context.Conforming.IsEmpty
        ? null
        : new ScriptObject { ["findings"] = new ScriptArray(context.Conforming.Select(FindingView.Of)) };
}
