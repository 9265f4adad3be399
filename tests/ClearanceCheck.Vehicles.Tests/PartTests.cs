using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles.Tests;

public sealed class PartTests
{
    private readonly ParameterVectorBuilder builder = new();

    [Fact]
    public void Every_number_of_a_part_is_used_once()
    {
        Part[] parts =
        [
            Part("brake-line", new PartForm.Chain([Point("1"), Point("2")], Length("od"), [0])),
            Part("brake-hose", new PartForm.Hose(Place(), Place(), Length("free"), Length("hose-od"))),
            Part("shock", new PartForm.Shock(Place(), Place(), Length("closed"), Length("open"), null)),
            Part("shock", new PartForm.Shock(Place(), Place(), Length("closed"), Length("open"), Sleeves())),
            Part("driveshaft", new PartForm.Shaft(Place(), Place(), Sleeves())),
            Part("driveshaft", JointedShaft()),
            Part("coil-spring", new PartForm.Coil(Place(), Place(), Length("coil-od"), Length("wire"), 6)),
            Part("link", new PartForm.Link(Place(), Place(), Length("link-od"))),
            Part("tire", new PartForm.Tire(new WheelSeat(Point("hub"), Point("other-hub"), true), Length("radius"), Length("width"), Length("offset"), 203.2)),
            Part("wheel", new PartForm.Wheel(new WheelSeat(Point("hub"), null, false), [Corner(), Corner()], Length("wall"), [Corner()], Length("disc-wall"))),
            Part("bump-stop", new PartForm.BumpStop(Place(), Place(), Length("height"), Length("crush"))),
            Part("limit-strap", new PartForm.LimitStrap(Place(), Place(), Length("strap"), Length("stretch"))),
            Part("steering-stop", new PartForm.SteeringStop(Place(), Place())),
            Part("coil-spring", new PartForm.Coil(Place(), Place(), Length("coil-od"), Length("wire"), 6) { SolidHeight = Length("solid"), FreeLength = Length("free") }),
            Part("leaf-spring", Leaves()),
        ];

        parts.SelectMany(ParameterUse.Of).Order().ShouldBe(Enumerable.Range(0, builder.Build().Count));
        parts.Select(ParameterUse.IsStop).ShouldBe([false, false, true, true, false, false, false, false, false, false, true, true, true, true, false]);
    }

    [Fact]
    public void Every_number_of_an_axle_is_used_once()
    {
        Wheel left = new("rear/axle", Point("hub-left"), Length("hanging-left"), Length("ride-left"));
        Wheel right = new("rear/axle", Point("hub-right"), null, Length("ride-right"));
        var joint = new FreeJoint("pin", FreeJointKind.Hinge, "chassis", "rear/axle", [Point("at")], Point("axis"));
        var axle = new Axle
        {
            Name = "rear",
            Layout = "free",
            Points = System.Collections.Immutable.ImmutableSortedDictionary<string, MeasuredPoint>.Empty.Add("p", Point("p")),
            FreeBodies = ["axle"],
            FreeJoints = [joint],
            Left = left,
            Right = right,
            Figures = System.Collections.Immutable.ImmutableSortedDictionary<string, MeasuredLength>.Empty.Add("clamp-length", Length("clamp")),
            DroopLimit = Length("droop"),
            BumpLimit = Length("bump"),
            OtherStates = System.Collections.Immutable.ImmutableSortedDictionary<string, AxleState>.Empty.Add("flexed", new AxleState("flexed", Length("flexed-left"), Length("flexed-right"))),
        };

        ParameterUse.Of(axle).Order().ShouldBe(Enumerable.Range(0, builder.Build().Count));
    }

    [Fact]
    public void A_part_lies_by_the_numbers_of_the_axle_that_places_its_points_and_by_no_other()
    {
        StatedPoint stated = new(Point("seen"), "rear/axle", "ride");
        Part placed = Part("brake-line", new PartForm.Chain([stated.Point, Point("2")], Length("od"), [0]));
        Part plain = Part("brake-line", new PartForm.Chain([Point("3"), Point("4")], Length("od"), [0]));
        Axle rear = Axle("rear"), front = Axle("front");
        Vehicle vehicle = new()
        {
            Description = new VehicleDescription { Name = "test" },
            Scope = ["rear"],
            Parameters = builder.Build(),
            Axles = [rear, front],
            Parts = [placed, plain],
            FixedBodies = [],
            StatedPoints = [stated],
            Assumptions = [],
            Readings = [],
        };

        ParameterUse.Of(vehicle, [placed]).Order().ShouldBe(ParameterUse.Of(placed).Concat(ParameterUse.Of(rear)).Order());
        ParameterUse.Of(vehicle, [plain]).Order().ShouldBe(ParameterUse.Of(plain).Order());
        ParameterUse.Of(vehicle, [plain, placed]).ShouldBeUnique();
    }

    [Fact]
    public void Another_form_between_mirrored_places_keeps_its_sizes()
    {
        MeasuredPoint own = Point("own");
        PartForm[] forms =
        [
            new PartForm.Hose(Place(), Place(), Length("free"), Length("hose-od")),
            new PartForm.Shock(Place(), Place(), Length("closed"), Length("open"), Sleeves()),
            new PartForm.Shaft(Place(), Place(), Sleeves()),
            JointedShaft(),
            new PartForm.Coil(Place(), Place(), Length("coil-od"), Length("wire"), 6),
            new PartForm.Link(Place(), Place(), Length("link-od")),
            new PartForm.BumpStop(Place(), Place(), Length("height"), Length("crush")),
            new PartForm.LimitStrap(Place(), Place(), Length("strap"), Length("stretch")),
            new PartForm.SteeringStop(Place(), Place()),
            Leaves(),
        ];

        foreach (PartForm form in forms)
        {
            PartForm image = form.WithEnds(end => end with { At = end.At.Mirrored(own) });
            image.Ends.ShouldBe([.. form.Ends.Select(e => e with { At = e.At.Mirrored(own) })]);
            if (form is PartForm.Shaft shaft) ((PartForm.Shaft)image).Aheads.ShouldBe(shaft.Aheads.Select(a => a with { At = a.At.Mirrored(own) }));
            image.WithEnds(Unmirrored).ShouldBe(form);
        }

        Should.Throw<InvalidOperationException>(() => new PartForm.Box(own, own).WithEnds(end => end));

        Place Unmirrored(Place image) =>
            image with { At = new MeasuredPoint(new(image.At.X.Index), new(image.At.Y.Index), new(image.At.Z.Index)) };
    }

    [Fact]
    public void Only_suspension_things_and_stops_may_be_mirrored()
    {
        PartKinds.All.Where(k => k.IsMirrorable).Select(k => k.Id).ShouldBe(["link", "shock", "coil-spring", "bump-stop", "limit-strap"]);
    }

    private PartForm.LeafSpring Leaves() => new(Place(), Place(), Place(), Length("clamp"), Length("leaf-width"), Length("leaf"), Length("stack"), Length("shape"));

    [Fact]
    public void Travel_of_the_measured_state_is_what_the_fender_came_nearer_since()
    {
        Wheel wheel = new("rear/axle", Point("hub"), builder.Length("hanging", 742, 3, false), builder.Length("ride", 640, 3, false));

        wheel.MeasuredTravelMm(builder.Build().Nominal).ShouldBe(-102);
        (wheel with { HubToFenderMeasured = null }).MeasuredTravelMm(builder.Build().Nominal).ShouldBe(0);
    }

    [Fact]
    public void Kinds_are_named_once_and_belong_to_groups()
    {
        PartKinds.All.Select(k => k.Id).ShouldBeUnique();
        PartKinds.All.ShouldAllBe(k => !k.Groups.IsEmpty && k.Meaning.Length > 0);
        PartKinds.Find("brake-line").ShouldNotBeNull().Forms.ShouldBe([PartFormKind.Chain]);
        PartKinds.Find("brake-lime").ShouldBeNull();
    }

    private Axle Axle(string name) => new()
    {
        Name = name,
        Layout = "free",
        Points = System.Collections.Immutable.ImmutableSortedDictionary<string, MeasuredPoint>.Empty,
        FreeBodies = [],
        FreeJoints = [],
        Left = new Wheel($"{name}/axle", Point("left"), Length("hanging-left"), Length("ride-left")),
        Right = new Wheel($"{name}/axle", Point("right"), null, null),
        OtherStates = System.Collections.Immutable.ImmutableSortedDictionary<string, AxleState>.Empty.Add("flexed", new AxleState("flexed", Length("flexed-left"), Length("flexed-right"))),
        DroopLimit = Length("droop"),
        BumpLimit = Length("bump"),
    };

    private static Part Part(string kind, PartForm form) =>
        new() { Id = kind, Name = kind, Kind = PartKinds.Find(kind)!, Body = Vehicle.Chassis, Form = form, Touches = [] };

    private PartForm.Shaft JointedShaft() => new(Place(), Place(), Sleeves())
    {
        FirstEnd = new ShaftEnd(ShaftJointKind.DoubleCardan, Point("ahead")),
        SecondEnd = new ShaftEnd(ShaftJointKind.Single, Point("ahead")),
        Splines = new Splines(Length("splines"), Length("engaged")),
        PhaseRad = 0.1,
        After = "front-piece",
    };

    private Sleeves Sleeves() => new(true, Length("tube-od"), Length("tube"), Length("rod-od"), Length("rod"));

    private ProfileCorner Corner() => new(Length("radius"), Length("along"));

    private Place Place() => new(Vehicle.Chassis, Point("at"));

    private MeasuredPoint Point(string path) => builder.Point(path, Vector3d.Zero, 1, false);

    private MeasuredLength Length(string path) => builder.Length(path, 100, 1, false);
}
