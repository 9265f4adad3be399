using ClearanceCheck.Reporting.Pages;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Tests.Pages;

/// <summary>A section that the program does not know: what an author of a new one writes.</summary>
internal sealed class AddedSection : ReportSection
{
    public override string Name => "torque";

    public override string Title => "Torque";

    public override string Template => "<h2 id=\"section-torque-heading\">Torque</h2><p class=\"torque-line\">{{ vehicle }}</p>";

    public override string Style => ".torque-line { font-weight: 700; }";

    public override ScriptObject View(ReportContext context) => new() { ["vehicle"] = context.Result.Vehicle.Name };
}
