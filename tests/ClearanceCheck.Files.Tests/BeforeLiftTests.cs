using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests;

/// <summary>Toe, what was read before the lift, and studs of rods: what they become in the model, and every message about them.</summary>
public sealed class BeforeLiftTests
{
    private const string Layout = "    layout: three-link\n";
    private const string Parts = "\nparts:\n";
    private const string RodSecond = "    second: { body: rear/axle, at: [-400, 500, -300] }\n";

    public static TheoryData<string, string, string> Faults { get; } = new()
    {
        { "toe-out-of-range", Layout, Layout + "    toe: { front: 1412 mm, rear: 1515 mm, over: 740 mm }\n" },
        { "toe-without-over", Layout, Layout + "    toe: { front: 1512 mm, rear: 1515 mm }\n" },
        { "toe-in-degrees", Layout, Layout + "    toe: { front: 0.1 deg, rear: 1515 mm, over: 740 mm }\n" },
        { "before-lift-not-tied", Parts, "\nbefore-lift: { hub-to-fender: { rear-left: 560 mm }, hanging: { rear-left: 650 mm, rear-right: 650 mm } }\nparts:\n" },
        { "before-lift-hangs-too-high", Parts, "\nbefore-lift: { hub-to-fender: { rear-left: 560 mm }, hanging: { rear-left: 550 mm } }\nparts:\n" },
        { "before-lift-bumped-too-low", Parts, "\nbefore-lift: { hub-to-fender: { rear-left: 560 mm }, bumped: { rear-left: 570 mm } }\nparts:\n" },
        { "before-lift-no-such-tire", Parts, "\nbefore-lift: { tire: 245/75 }\nparts:\n" },
        { "before-lift-tire-circumference-differs", Parts, "\nbefore-lift: { tire: 245/75R16, tire-circumference: 2900 mm }\nparts:\n" },
        { "axis-is-end", RodSecond, RodSecond + "    axis-second: [-400, 500, -300]\n" },
        { "axis-along-rod", RodSecond, RodSecond + "    axis-first: [700, 408, -116]\n" },
        { "axis-two-numbers", RodSecond, RodSecond + "    axis-first: [700, 408]\n" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = EveryForm.Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void Toe_is_three_readings_and_says_what_is_made_of_them()
    {
        Vehicle vehicle = EveryForm.Read((Layout, Layout + "    toe: { front: 1512 mm, rear: 1515 mm, over: 740 mm, within: 0.5 mm }\n")).Vehicle.ShouldNotBeNull();

        ToeReading toe = vehicle.Axles[0].Toe.ShouldNotBeNull();
        toe.TotalRad(vehicle.Parameters.Nominal).ShouldBe(2 * Math.Asin(3 / 1480.0), 1e-12);
        vehicle.Parameters.Parameters[toe.Rear.Index].HalfWidthMm.ShouldBe(0.5);
        vehicle.Assumptions.Single(a => a.Path == "axles/rear/toe").Text
            .ShouldBe("Taken as read at ride height with the rear wheels straight ahead, and as shared alike by both. Angles of the wheels start from it; the tires' shapes stand without it.");
    }

    [Fact]
    public void The_travel_before_the_lift_is_known_where_its_ends_were_read()
    {
        Vehicle vehicle = EveryForm.Read((Parts, "\nbefore-lift: { hub-to-fender: { rear-left: 560 mm, rear-right: 561 mm }, hanging: { rear-left: 650 mm }, bumped: { rear-left: 495 mm } }\nparts:\n")).Vehicle.ShouldNotBeNull();

        (string corner, OriginalTravel travel) = vehicle.OriginalTravels.ShouldHaveSingleItem();
        corner.ShouldBe("rear-left");
        new[] { travel.Hanging!.Value, travel.Ride, travel.Bumped!.Value }.Select(l => l.At(vehicle.Parameters.Nominal)).ShouldBe([650, 560, 495]);
        vehicle.RollingChanges.ShouldBeEmpty();
    }

    [Fact]
    public void The_tire_before_the_lift_is_its_circumference_or_what_its_size_says()
    {
        Vehicle measured = EveryForm.Read((Parts, "\nbefore-lift: { tire-circumference: 2390 mm }\nparts:\n")).Vehicle.ShouldNotBeNull();
        Vehicle sized = EveryForm.Read((Parts, "\nbefore-lift: { tire: 245/75R16 }\nparts:\n")).Vehicle.ShouldNotBeNull();

        measured.RollingChanges["rear"].Percent(measured.Parameters.Nominal).ShouldBe(100 * ((2622 / 2390.0) - 1), 1e-9);
        // 16 in and twice 75 % of 245 mm, new: within 1.5 % of what is around it.
        RollingChange change = sized.RollingChanges["rear"];
        double around = Math.PI * ((16 * 25.4) + (2 * 0.75 * 245));
        change.Before.At(sized.Parameters.Nominal).ShouldBe(around, 1e-6);
        sized.Parameters.Parameters[change.Before.Index].HalfWidthMm.ShouldBe(0.015 * around, 1e-6);
        change.Now.At(sized.Parameters.Nominal).ShouldBe(2622);
    }

    [Fact]
    public void A_rod_has_the_studs_that_were_measured_and_says_which_end_has_none()
    {
        Vehicle vehicle = EveryForm.Read((RodSecond, RodSecond + "    axis-second: [-400, 500, -220]\n")).Vehicle.ShouldNotBeNull();

        Part rod = vehicle.Parts.Single(p => p.Id == "steering-rod");
        var link = (PartForm.Link)rod.Form;
        link.FirstAxis.ShouldBeNull();
        link.SecondAxis!.Value.At(vehicle.Parameters.Nominal).Z.ShouldBe(-220);
        ParameterUse.Of(rod).ShouldContain(link.SecondAxis.Value.Z.Index);
        vehicle.Assumptions.ShouldContain(a => a.Path == "parts/steering-rod" && a.Text == "No point ahead of a stud at its first end was typed: the angle of that joint is not looked at.");
        var moved = (PartForm.Link)link.WithEnds(p => p with { At = p.At.Mirrored(p.At) });
        moved.SecondAxis!.Value.IsMirrored.ShouldBeTrue();
    }
}
