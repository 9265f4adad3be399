using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Tests.Layouts;
using ClearanceCheck.Quantities.Alignment;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Tests;

/// <summary>How far an axle stands beside the vehicle's centre plane.</summary>
public sealed class AxleOffsetTests
{
    [Theory]
    [InlineData(807, 6)]
    [InlineData(783, 6)]
    [InlineData(795, 0)]
    public void An_axle_is_as_far_aside_as_the_middle_of_its_hubs_and_as_uncertain(double leftHub, double offset)
    {
        Vehicle bare = Samples.Of("three-link", limit: 60).At("hub-left", 0, leftHub, 0).Build();
        Axle axle = bare.Axles[0];
        var tire = new Part
        {
            Id = "left-tire",
            Name = "Left tire",
            Kind = PartKinds.Find("tire")!,
            Body = axle.Left.Body,
            Touches = [],
            Form = new PartForm.Tire(new WheelSeat(axle.Left.Hub, null, true), axle.BumpLimit, axle.BumpLimit, axle.BumpLimit, 200),
        };
        Vehicle vehicle = bare with { Parts = [tire] };
        VehicleMotion motion = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull();

        Measurement measured = new AxleOffsetQuantity().Measure(new MeasureRequest(motion, tire, null, double.PositiveInfinity));

        measured.Value.ShouldBe(offset, 1e-6);
        // Each hub, within 4 mm, counts half, also where the axle is centred: it may be aside either way.
        measured.Places[0].StandardUncertainty.ShouldBe(ByHand.U(4) * Math.Sqrt(0.5), 0.02);
    }
}
