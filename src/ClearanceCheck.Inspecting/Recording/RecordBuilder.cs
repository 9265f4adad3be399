using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Rules;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>Holds what the inspector wrote against what the rules ask.</summary>
internal static class RecordBuilder
{
    public static RecordCard Build(Vehicle vehicle, RuleLibrary library) => new()
    {
        IsWhole = vehicle.IsWhole,
        Items = [.. library.Items.Select(i => ItemJudge.Judge(i, vehicle)).OfType<ItemCard>()],
        Coverage = vehicle.IsWhole ? [.. library.Coverage.SelectMany(r => CoverageJudge.Judge(r, vehicle))] : [],
        Pivots = [.. vehicle.Axles.Where(a => vehicle.Scope.Contains(a.Name)).SelectMany(a => TighteningAudit.Of(a, vehicle.Record))],
        Temporary = [.. vehicle.Record.Temporary.Select(t => new TemporaryCard(t.Id, t.What, t.MustNot, t.Until, t.By))],
    };
}
