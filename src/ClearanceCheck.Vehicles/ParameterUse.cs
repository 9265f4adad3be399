namespace ClearanceCheck.Vehicles;

/// <summary>Which parameters an element of the model is made of.</summary>
public static class ParameterUse
{
    /// <summary>All numbers that an axle's motion, and the place of what was measured in another state, depend on; its stops left out.</summary>
    public static IEnumerable<int> Of(Axle axle)
    {
        IEnumerable<MeasuredPoint> joints = axle.FreeJoints.SelectMany(j => j.Axis is { } axis ? j.At.Append(axis) : j.At);
        IEnumerable<MeasuredLength?> readings =
        [
            axle.Left.HubToFenderMeasured, axle.Left.HubToFenderRide, axle.Right.HubToFenderMeasured, axle.Right.HubToFenderRide,
            .. axle.OtherStates.Values.SelectMany(s => s.Readings).Cast<MeasuredLength?>(),
        ];
        IEnumerable<MeasuredPoint> positions = axle.IsGuided ? axle.ComparedPoints.Select(p => p.Point) : [];
        return axle.Points.Values.Concat(positions).Concat(joints).Append(axle.Left.Hub).Append(axle.Right.Hub).SelectMany(Of).Concat(axle.Figures.Values.SelectMany(Of))
            .Concat(readings.SelectMany(Of)).Concat(Of(axle.DroopLimit)).Concat(Of(axle.BumpLimit));
    }

    /// <summary>All numbers that describe a part.</summary>
    public static IEnumerable<int> Of(Part part) => part.Form switch
    {
        PartForm.Chain chain => [.. chain.Path.SelectMany(Of), .. Of(chain.OutsideDiameter)],
        PartForm.Plate plate => [.. plate.Outline.SelectMany(Of), .. Of(plate.Thickness)],
        PartForm.Box box => [.. Of(box.Corner), .. Of(box.Opposite)],
        PartForm.Turned turned => [.. Of(turned.From), .. Of(turned.To), .. turned.Profile.SelectMany(Of), .. Of(turned.Wall)],
        PartForm.Tire tire => [.. Of(tire.Seat), .. Of(tire.RadiusMm), .. Of(tire.WidthMm), .. Of(tire.Offset)],
        PartForm.Wheel wheel =>
        [
            .. Of(wheel.Seat), .. wheel.Barrel.SelectMany(Of), .. Of(wheel.BarrelWall), .. wheel.Disc.SelectMany(Of), .. Of(wheel.DiscWall),
        ],
        PartForm.Scanned scanned => Of(scanned.Shift),
        PartForm.Hose hose => [.. Of(hose.Upper.At), .. Of(hose.Lower.At), .. Of(hose.FreeLength), .. Of(hose.OutsideDiameter)],
        PartForm.Link link => [.. Of(link.First.At), .. Of(link.Second.At), .. Of(link.OutsideDiameter), .. Of(link.FirstAxis), .. Of(link.SecondAxis)],
        PartForm.Shock shock => [.. Of(shock.Upper.At), .. Of(shock.Lower.At), .. Of(shock.Closed), .. Of(shock.Open), .. Of(shock.Sleeves)],
        PartForm.Shaft shaft =>
        [
            .. Of(shaft.First.At), .. Of(shaft.Second.At), .. Of(shaft.Sleeves),
            .. shaft.Aheads.SelectMany(a => Of(a.At)), .. Of(shaft.Splines?.Length), .. Of(shaft.Splines?.Engaged),
        ],
        PartForm.Coil coil => [.. Of(coil.Lower.At), .. Of(coil.Upper.At), .. Of(coil.OutsideDiameter), .. Of(coil.Wire), .. Of(coil.SolidHeight), .. Of(coil.FreeLength)],
        PartForm.BumpStop stop => [.. Of(stop.Frame.At), .. Of(stop.Axle.At), .. Of(stop.Height), .. Of(stop.Crush)],
        PartForm.LimitStrap strap => [.. Of(strap.Upper.At), .. Of(strap.Lower.At), .. Of(strap.Length), .. Of(strap.Stretch)],
        PartForm.SteeringStop stop => [.. Of(stop.First.At), .. Of(stop.Second.At)],
        PartForm.LeafSpring leaf =>
        [
            .. leaf.Ends.SelectMany(e => Of(e.At)), .. Of(leaf.Clamp), .. Of(leaf.Width), .. Of(leaf.Thickness), .. Of(leaf.Stack), .. Of(leaf.Shape),
        ],
        PartForm.Unshaped => [],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>All numbers that parts lie by: their own, and those of the axles that place what was measured in another state.</summary>
    public static IEnumerable<int> Of(Vehicle vehicle, IEnumerable<Part> parts)
    {
        HashSet<int> own = [.. parts.SelectMany(Of)];
        HashSet<string> placing = [.. vehicle.StatedPoints.Where(s => own.Contains(s.Point.X.Index)).Select(s => s.Axle)];
        return own.Concat(vehicle.Axles.Where(a => placing.Contains(a.Name)).SelectMany(Of)).Distinct();
    }

    /// <summary>True for a part that ends the travel or the steering.</summary>
    public static bool IsStop(Part part) =>
        part.Form is PartForm.Shock or PartForm.BumpStop or PartForm.LimitStrap or PartForm.SteeringStop or PartForm.Coil { SolidHeight: not null };

    private static IEnumerable<int> Of(MeasuredPoint point) => point.Indices;

    private static IEnumerable<int> Of(MeasuredPoint? point) => point is { } typed ? typed.Indices : [];

    private static IEnumerable<int> Of(MeasuredLength length) => length.Indices;

    private static IEnumerable<int> Of(MeasuredLength? length) => length is { } typed ? typed.Indices : [];

    private static IEnumerable<int> Of(ProfileCorner corner) => [.. Of(corner.Radius), .. Of(corner.Along)];

    private static IEnumerable<int> Of(WheelSeat seat) => seat.OtherHub is { } other ? Of(seat.Hub).Concat(Of(other)) : Of(seat.Hub);

    private static IEnumerable<int> Of(Sleeves? sleeves) =>
        sleeves is null ? [] : [.. Of(sleeves.TubeDiameter), .. Of(sleeves.TubeLength), .. Of(sleeves.RodDiameter), .. Of(sleeves.RodLength)];
}
