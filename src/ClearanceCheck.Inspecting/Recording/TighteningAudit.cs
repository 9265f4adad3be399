using ClearanceCheck.Inspecting.Results.Record;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Inspecting.Recording;

/// <summary>Which bushed pivots of an axle were tightened, and how the vehicle stood then.</summary>
internal static class TighteningAudit
{
    public static IEnumerable<PivotCard> Of(Axle axle, InspectorsRecord record) =>
        BushedPivots.Of(axle).Select(p => Of(axle, p.Name, [.. record.Tightened.Where(t => t.Axle == axle.Name && t.Pivots.Contains(p.Name))]));

    // Of two that contradict each other the worse counts.
    private static PivotCard Of(Axle axle, string pivot, Tightening[] typed)
    {
        Tightening? said = Array.Find(typed, t => !t.AtRideHeight) ?? typed.FirstOrDefault();
        PivotOutcome outcome = said is null ? PivotOutcome.Open : said.AtRideHeight ? PivotOutcome.AtRideHeight : PivotOutcome.Hanging;
        return new PivotCard($"{axle.Name}-{pivot}", axle.Name, $"{axle.Name} axle, {pivot.Replace('-', ' ')}", outcome, said?.By, said?.Mark);
    }
}
