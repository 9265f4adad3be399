using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests;

/// <summary>An axle off the middle of the vehicle makes mirror images on it wrong by twice that, and that is said.</summary>
public sealed class MirrorComparisonTests
{
    [Theory]
    [InlineData(2.9, false)]
    [InlineData(3.1, true)]
    [InlineData(-12, true)]
    public void Hubs_that_were_both_measured_say_how_far_aside_the_axle_stood(double aside, bool said)
    {
        // Images within 6 mm: an axle 3 mm aside uses them up.
        ModelAssumption[] sentences = [.. Of(new ThreeLinkVehicle { HubsAside = aside }, 6)];

        sentences.Length.ShouldBe(said ? 1 : 0);
        if (!said) return;
        sentences[0].Path.ShouldBe("parts/shock-right");
        sentences[0].Text.ShouldBe(
            $"By its hubs the axle rear stood {Math.Abs(aside):0} mm {(aside > 0 ? "left" : "right")} of the centre plane as it was measured, so its mirror image on the axle may be {2 * Math.Abs(aside):0} mm off, more than the 6 mm that was said: measure both sides.");
    }

    [Fact]
    public void Where_one_hub_is_an_image_the_links_say_how_far_the_axle_moves_aside_to_ride_height()
    {
        // The track bar swings the axle 100 mm up: its 89 mm fall over 915 mm becomes a rise of 11 mm, so the axle moves by what the fall had taken,
        // some 4 mm, but for what the links' own arcs do to its ends.
        var source = new ThreeLinkVehicle { HubToFenderMeasured = 740, HubToFenderRide = 640 };
        double expected = Math.Sqrt((915 * 915) + (89 * 89) + (30 * 30)) - Math.Sqrt((915.0 * 915) + (11 * 11) + (30 * 30));

        ModelAssumption[] sentences = [.. Of(source, 6, mirrorsHub: true)];

        ModelAssumption said = sentences.ShouldHaveSingleItem();
        expected.ShouldBe(4.3, 0.1);
        said.Text.ShouldStartWith("From the state hanging to ride height the axle rear moves 4 mm right: if it stands in the middle at ride height, its mirror image on the axle may be 8 mm off, more than the 6 mm");
        Of(source, 12, mirrorsHub: true).ShouldBeEmpty();
    }

    [Fact]
    public void Without_an_image_nothing_is_said()
    {
        Vehicle vehicle = new ThreeLinkVehicle { HubsAside = 50 }.Build("three-link");

        MirrorComparison.Of(VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull()).ShouldBeEmpty();
    }

    private static IEnumerable<ModelAssumption> Of(ThreeLinkVehicle source, double within, bool mirrorsHub = false)
    {
        Place upper = source.On(Vehicle.Chassis, new(-150, 380, 320)), lower = source.On("rear/axle", new(-130, 412, -57));
        Place Image(Place place) => place with { At = place.At.Mirrored(source.Deviation(within)) };
        var shock = new PartForm.Shock(Image(upper), Image(lower), source.Length(200), source.Length(600), null);
        source.Parts.Clear();
        source.Parts.Add(new Part { Id = "shock-right", Name = "shock", Kind = PartKinds.Find("shock")!, Body = Vehicle.Chassis, Form = shock, Touches = [] });
        Vehicle vehicle = source.Build("three-link", mirroredHub: mirrorsHub ? source.Deviation(within) : null);
        vehicle = vehicle with { Axles = [vehicle.Axles[0] with { MeasuredIn = "hanging" }] };
        return MirrorComparison.Of(VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion.ShouldNotBeNull());
    }
}
