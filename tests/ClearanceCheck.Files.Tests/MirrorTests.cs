using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

/// <summary>One side typed, the other its mirror image.</summary>
public sealed class MirrorTests
{
    private static readonly (string, string)[] Axle =
    [
        ("    layout: three-link\n", "    layout: three-link\n    side: left\n    mirror-within: 5 mm\n"),
        ("        hub-left: [-612, 738, -402]\n        hub-right: [-612, -738, -404]\n", "        hub: [-612, 738, -402]\n"),
        ("        lower-link-left-frame: [288, 432, -232]\n        lower-link-left-axle: [-590, 505, -452]\n", "        lower-link-frame: [288, 432, -232]\n        lower-link-axle: [-590, 505, -452]\n"),
        ("        lower-link-right-frame: [288, -430, -233]\n        lower-link-right-axle: [-590, -506, -454]\n", ""),
    ];

    private static readonly (string, string) NoRightShock = (
        "  rear-shock-right:\n    kind: shock\n    name: Right rear shock\n    closed: 305 mm\n    open: 520 mm\n    upper: { body: chassis, at: [-700, -400, 60] }\n    lower: { body: rear/axle, at: [-660, -470, -457] }\n", "");

    private static readonly (string, string) Shock = ("  rear-shock-left:\n    kind: shock\n    name: Left rear shock\n", "  rear-damper:\n    kind: shock\n    side: left\n    name: Rear shock\n");

    [Fact]
    public void Points_of_a_side_are_typed_once_and_the_other_side_is_the_mirror_image()
    {
        Vehicle vehicle = FaultyFile.Read(Axle).Vehicle.ShouldNotBeNull();
        ReadOnlySpan<double> nominal = vehicle.Parameters.Nominal;

        vehicle.Axles[0].Points["hub-left"].At(nominal).ShouldBe(new Vector3d(-612, 738, -402));
        vehicle.Axles[0].Points["hub-right"].At(nominal).ShouldBe(new Vector3d(-612, -738, -402));
        vehicle.Axles[0].Points["lower-link-right-axle"].At(nominal).ShouldBe(new Vector3d(-590, -505, -452));
        vehicle.Axles[0].Points["track-bar-axle"].At(nominal).ShouldBe(new Vector3d(-668, -445, -320));
        vehicle.Axles[0].Right.Hub.ShouldBe(vehicle.Axles[0].Points["hub-right"]);
    }

    [Fact]
    public void An_image_moves_with_its_source_and_has_a_give_or_take_of_its_own()
    {
        Vehicle vehicle = FaultyFile.Read(Axle).Vehicle.ShouldNotBeNull();
        MeasuredPoint source = vehicle.Axles[0].Points["hub-left"], image = vehicle.Axles[0].Points["hub-right"];

        double[] moved = vehicle.Parameters.Shifted(source.Y.Index, 2);
        moved[source.Z.Index] += 3;
        source.At(moved).ShouldBe(new Vector3d(-612, 740, -399));
        image.At(moved).ShouldBe(new Vector3d(-612, -740, -399));

        image.At(vehicle.Parameters.Shifted(image.Y.OwnIndex, 4)).ShouldBe(new Vector3d(-612, -734, -402));
        Parameter own = vehicle.Parameters.Parameters[image.Y.OwnIndex];
        (own.Path, own.ValueMm, own.HalfWidthMm, own.WithinIsAssumed).ShouldBe(("axles/rear/points/hub-right.y", 0, 5, false));
        foreach (int index in image.Indices) ParameterUse.Of(vehicle.Axles[0]).ShouldContain(index);
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/mirror" && a.Text.Contains("5 mm each way;", StringComparison.Ordinal));
    }

    [Fact]
    public void A_point_measured_on_the_other_side_too_wins_over_its_image()
    {
        Vehicle vehicle = FaultyFile.Read([.. Axle, ("        hub: [-612, 738, -402]\n", "        hub: [-612, 738, -402]\n        hub-right: [-615, -731, -404]\n")]).Vehicle.ShouldNotBeNull();

        vehicle.Axles[0].Points["hub-right"].At(vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-615, -731, -404));
        vehicle.Axles[0].Points["hub-right"].IsMirrored.ShouldBeFalse();
        vehicle.Axles[0].Points["lower-link-right-axle"].IsMirrored.ShouldBeTrue();
    }

    [Fact]
    public void Without_a_typed_give_or_take_the_usual_one_is_listed()
    {
        Vehicle vehicle = FaultyFile.Read([.. Axle, ("    mirror-within: 5 mm\n", "")]).Vehicle.ShouldNotBeNull();

        Parameter own = vehicle.Parameters.Parameters[vehicle.Axles[0].Points["hub-right"].X.OwnIndex];
        (own.HalfWidthMm, own.WithinIsAssumed).ShouldBe((Defaults.MirrorMm, true));
        vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/mirror" && a.Text.Contains("6 mm each way (not typed; common practice, no source)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_with_a_side_is_one_on_each_side()
    {
        Vehicle vehicle = FaultyFile.Read(Shock, NoRightShock).Vehicle.ShouldNotBeNull();
        Part left = Part(vehicle, "rear-damper-left"), right = Part(vehicle, "rear-damper-right");
        (PartForm.Shock source, PartForm.Shock image) = ((PartForm.Shock)left.Form, (PartForm.Shock)right.Form);

        (left.Name, right.Name).ShouldBe(("Rear shock, left", "Rear shock, right"));
        image.Lower.At.At(vehicle.Parameters.Nominal).ShouldBe(new Vector3d(-660, -470, -455));
        image.Lower.Body.ShouldBe("rear/axle");
        (image.Open, image.Closed).ShouldBe((source.Open, source.Closed));
        vehicle.Parts.ShouldNotContain(p => p.Id == "rear-damper");
        foreach (int index in source.Lower.At.Indices) ParameterUse.Of(right).ShouldContain(index);
        vehicle.Parameters.Parameters[image.Upper.At.Z.OwnIndex].Path.ShouldBe("parts/rear-damper-right/upper.z");
    }

    [Fact]
    public void The_other_side_typed_as_a_part_of_its_own_wins_over_the_image_and_that_is_listed()
    {
        Vehicle vehicle = FaultyFile.Read(("  rear-shock-left:\n    kind: shock\n    name: Left rear shock\n", "  rear-shock:\n    kind: shock\n    side: left\n")).Vehicle.ShouldNotBeNull();

        Part(vehicle, "rear-shock-right").Name.ShouldBe("Right rear shock");
        Part(vehicle, "rear-shock-left").Name.ShouldBe("rear-shock-left");
        vehicle.Assumptions.ShouldContain(a => a.Path == "parts/rear-shock-left" && a.Text == "Its mirror image is not made: `rear-shock-right` was measured itself.");
    }

    [Fact]
    public void Touching_a_part_with_a_side_means_both_but_among_such_parts_the_own_side()
    {
        Vehicle vehicle = FaultyFile.Read(
            Shock, NoRightShock,
            ("    name: Rear axle tube\n", "    name: Rear axle tube\n    touches: [ rear-damper ]\n"),
            ("  rear-bump-stop-left:\n    kind: bump-stop\n    name: Left rear bump stop\n", "  rear-pad:\n    kind: bump-stop\n    side: left\n    touches: [ rear-damper ]\n")).Vehicle.ShouldNotBeNull();

        Part(vehicle, "rear-axle-tube").Touches.ShouldBe(["rear-damper-left", "rear-damper-right"]);
        Part(vehicle, "rear-pad-left").Touches.ShouldBe(["rear-damper-left"]);
        Part(vehicle, "rear-pad-right").Touches.ShouldBe(["rear-damper-right"]);
    }

    [Fact]
    public void An_image_of_a_point_from_another_state_is_an_image_of_the_placed_point()
    {
        Vehicle vehicle = FaultyFile.Read(Shock, NoRightShock, ("    name: Rear shock\n", "    name: Rear shock\n    in: ride\n")).Vehicle.ShouldNotBeNull();

        StatedPoint stated = vehicle.StatedPoints.ShouldHaveSingleItem();
        ((PartForm.Shock)Part(vehicle, "rear-damper-right").Form).Lower.At.Z.Index.ShouldBe(stated.Point.Z.Index);
    }

    [Fact]
    public void An_image_of_something_on_a_body_of_one_side_rides_on_that_of_the_other()
    {
        Vehicle vehicle = FaultyFile.Read(
            (FreeLayout.ThreeLink, FreeLayout.Text("within: 3 mm").Replace("bodies: [ axle ]", "bodies: [ axle, arm-left, arm-right ]", StringComparison.Ordinal)),
            Shock, NoRightShock, ("lower: { body: rear/axle, at: [-660, 470, -455] }", "lower: { body: rear/arm-left, at: [-660, 470, -455] }")).Vehicle.ShouldNotBeNull();

        Part(vehicle, "rear-damper-left").Form.Ends.Select(e => e.Body).ShouldBe(["chassis", "rear/arm-left"]);
        Part(vehicle, "rear-damper-right").Form.Ends.Select(e => e.Body).ShouldBe(["chassis", "rear/arm-right"]);
    }

    [Fact]
    public void What_is_listed_or_typed_covers_every_number_of_a_mirrored_model()
    {
        Vehicle vehicle = FaultyFile.Read([.. Axle, Shock, NoRightShock]).Vehicle.ShouldNotBeNull();

        foreach (Parameter deviation in vehicle.Parameters.Parameters.Where(p => p.ValueMm == 0 && p.Path.Contains("-right", StringComparison.Ordinal)))
            vehicle.Assumptions.ShouldContain(a => a.Path == "axles/rear/mirror" || deviation.Path.StartsWith(a.Path + "/", StringComparison.Ordinal));
    }

    private static Part Part(Vehicle vehicle, string id) => vehicle.Parts.Single(p => p.Id == id);
}
