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
            Part("coil-spring", new PartForm.Coil(Place(), Place(), Length("coil-od"), Length("wire"), 6)),
            Part("link", new PartForm.Link(Place(), Place(), Length("link-od"))),
            Part("tire", new PartForm.Tire(new WheelSeat(Point("hub"), Point("other-hub"), true), Length("radius"), Length("width"), Length("offset"), 203.2)),
            Part("wheel", new PartForm.Wheel(new WheelSeat(Point("hub"), null, false), [Corner(), Corner()], Length("wall"), [Corner()], Length("disc-wall"))),
            Part("bump-stop", new PartForm.BumpStop(Place(), Place(), Length("height"), Length("crush"))),
        ];

        parts.SelectMany(ParameterUse.Of).Order().ShouldBe(Enumerable.Range(0, builder.Build().Count));
        parts.Select(ParameterUse.IsStop).ShouldBe([false, false, true, true, false, false, false, false, false, true]);
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
            DroopLimit = Length("droop"),
            BumpLimit = Length("bump"),
        };

        ParameterUse.Of(axle).Order().ShouldBe(Enumerable.Range(0, builder.Build().Count));
    }

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

    private static Part Part(string kind, PartForm form) =>
        new() { Id = kind, Name = kind, Kind = PartKinds.Find(kind)!, Body = Vehicle.Chassis, Form = form, Touches = [] };

    private Sleeves Sleeves() => new(true, Length("tube-od"), Length("tube"), Length("rod-od"), Length("rod"));

    private ProfileCorner Corner() => new(Length("radius"), Length("along"));

    private Place Place() => new(Vehicle.Chassis, Point("at"));

    private MeasuredPoint Point(string path) => builder.Point(path, Vector3d.Zero, 1, false);

    private MeasuredLength Length(string path) => builder.Length(path, 100, 1, false);
}
