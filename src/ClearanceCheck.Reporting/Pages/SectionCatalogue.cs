using System.Collections.Immutable;
using ClearanceCheck.Reporting.Sections;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>The sections of the report, in their order; the first carries the decision and the page's heading.</summary>
public static class SectionCatalogue
{
    public static ImmutableArray<ReportSection> All { get; } =
    [
        new DecisionSection(),
        new VehicleSection(),
        new UncheckedSection(),
        new FindingsSection(),
        new ConformingSection(),
        new ChecklistSection(),
        new TravelSection(),
        new UnmatchedSection(),
        new ExemptSection(),
        new MeasurementsSection(),
        new AssumptionsSection(),
        new MethodSection(),
        new CautionsSection(),
        new GatesSection(),
        new ProvenanceSection(),
    ];
}
