using System.Collections.Immutable;
using ClearanceCheck.Quantities.Alignment;
using ClearanceCheck.Quantities.AngleDifferences;
using ClearanceCheck.Quantities.Engagements;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Gearing;
using ClearanceCheck.Quantities.JointAngles;
using ClearanceCheck.Quantities.OverCentres;
using ClearanceCheck.Quantities.Preloads;
using ClearanceCheck.Quantities.Reserves;
using ClearanceCheck.Quantities.Slack;
using ClearanceCheck.Quantities.Spans;
using ClearanceCheck.Quantities.Steering;
using ClearanceCheck.Quantities.Travels;

namespace ClearanceCheck.Quantities;

/// <summary>All quantities by their word in rules: a new one is one folder and one line here.</summary>
public sealed class QuantityCatalogue(ImmutableArray<Quantity> quantities)
{
    public static QuantityCatalogue Standard { get; } = new(
    [
        new GapQuantity(),
        new HoseSlackQuantity(),
        new JointAngleQuantity(),
        new AngleDifferenceQuantity(),
        new EngagementQuantity(),
        new ReserveQuantity(),
        new OpenReserveQuantity(),
        new PreloadQuantity(),
        new BumpSteerQuantity(),
        new ToeChangeQuantity(),
        new ToeQuantity(),
        new OverCentreQuantity(),
        new SpanQuantity(),
        new AxleOffsetQuantity(),
        new WheelbaseDifferenceQuantity(),
        new TravelQuantity(),
        new GearingQuantity(),
    ]);

    public ImmutableArray<Quantity> All => quantities;

    public Quantity? Find(string id) => quantities.FirstOrDefault(q => q.Id == id);
}
