using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Steering;

/// <summary>How far the toe of an axle's two wheels together gets away from what it is at ride height, over the travel while the steering is held, degrees.</summary>
/// <remarks>A tie rod between the knuckles of a solid axle holds it whatever the axle does; told with the left tire.</remarks>
public sealed class ToeChangeQuantity : PosedQuantity
{
    public override string Id => "toe-change";

    public override string Name => "change of toe";

    public override string Meaning => "how far the toe of both wheels together gets away from what it is at ride height, over the travel while the steering is held straight ahead";

    public override QuantityUnit Unit => QuantityUnit.Degree;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => first.Form switch
    {
        PartForm.Tire { Seat.IsLeft: true } => null,
        PartForm.Tire => "toe is told with the left tire of an axle",
        _ => $"{first.Name} is not a tire",
    };

    private protected override PosedQuestions Ask(MeasureRequest request) => WheelAngles.Ask(request, Settings(), WheelAngles.BothWheels);
}
