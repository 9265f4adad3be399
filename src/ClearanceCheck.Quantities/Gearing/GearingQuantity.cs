using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Alignment;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gearing;

/// <summary>How much farther an axle's tires roll in a turn than those before the lift, percent; negative for smaller tires.</summary>
/// <remarks>By that much the vehicle is geared longer, and goes faster than its speedometer says where nobody set it anew. Told with the left tire.</remarks>
public sealed class GearingQuantity : PosedQuantity
{
    private const string NoTireBefore = "the tire before the lift is not in the file: type its size as `tire`, or its `tire-circumference`, under `before-lift`";

    public override string Id => "gearing";

    public override string Name => "change of gearing";

    public override string Meaning => "how much farther the tire rolls in a turn than the one before the lift; a vehicle with larger tires is geared longer and faster than its speedometer says";

    public override QuantityUnit Unit => QuantityUnit.Percent;

    public override bool IsWorstWhenLeast => false;

    public override bool BoundsBothSides => true;

    public override string? Refuses(Part first, Part? second) => AxleOf.RefusesAllButLeftTires(first, "the gearing");

    public override string? Unread(VehicleMotion motion, Part first) => motion.Vehicle.RollingChanges.ContainsKey(AxleOfPart(first)) ? null : NoTireBefore;

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        return request.Motion.Vehicle.RollingChanges.TryGetValue(AxleOfPart(request.First), out RollingChange? change)
            ? PosedQuestions.Of(new PosedQuestion(null, [], at => change.Percent(at.Parameters.Span), null) { Also = [.. change.Indices] })
            : PosedQuestions.Lack(NoTireBefore);
    }

    private static string AxleOfPart(Part tire) => tire.Body.Split('/')[0];
}
