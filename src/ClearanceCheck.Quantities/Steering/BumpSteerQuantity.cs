using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Steering;

/// <summary>How far a wheel steers by itself over the travel while the steering is held straight ahead, degrees.</summary>
public sealed class BumpSteerQuantity : PosedQuantity
{
    public override string Id => "bump-steer";

    public override string Name => "bump-steer";

    public override string Meaning => "how far the wheel steers by itself, to either side, over the travel while the steering is held straight ahead";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Tire ? null : $"{first.Name} is not a tire";

    private protected override PosedQuestions Ask(MeasureRequest request) =>
        WheelAngles.Ask(request, Settings(), [(((PartForm.Tire)request.First.Form).Seat.IsLeft, 1)]);
}
