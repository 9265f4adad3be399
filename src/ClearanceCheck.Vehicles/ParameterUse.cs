namespace ClearanceCheck.Vehicles;

/// <summary>Which parameters an element of the model is made of.</summary>
public static class ParameterUse
{
    /// <summary>All numbers that an axle's motion depends on, its stops left out.</summary>
    public static IEnumerable<int> Of(Axle axle)
    {
        foreach (MeasuredPoint point in axle.Points.Values)
            foreach (int i in Of(point)) yield return i;
        foreach (FreeJoint joint in axle.FreeJoints)
        {
            foreach (MeasuredPoint point in joint.At)
                foreach (int i in Of(point)) yield return i;
            if (joint.Axis is { } axis)
                foreach (int i in Of(axis)) yield return i;
        }

        foreach (Wheel wheel in new[] { axle.Left, axle.Right })
        {
            foreach (int i in Of(wheel.Hub)) yield return i;
            if (wheel.HubToFenderMeasured is { } measured) yield return measured.Index;
            if (wheel.HubToFenderRide is { } ride) yield return ride.Index;
        }

        yield return axle.DroopLimit.Index;
        yield return axle.BumpLimit.Index;
    }

    /// <summary>All numbers that describe a part.</summary>
    public static IEnumerable<int> Of(Part part) => part.Form switch
    {
        PartForm.Chain chain => chain.Path.SelectMany(Of).Append(chain.OutsideDiameter.Index),
        PartForm.Plate plate => plate.Outline.SelectMany(Of).Append(plate.Thickness.Index),
        PartForm.Box box => [.. Of(box.Corner), .. Of(box.Opposite)],
        PartForm.Turned turned => [.. Of(turned.From), .. Of(turned.To), .. turned.Profile.SelectMany(Of), .. Of(turned.Wall)],
        PartForm.Tire tire => [.. Of(tire.Seat), tire.RadiusMm.Index, tire.WidthMm.Index, tire.Offset.Index],
        PartForm.Wheel wheel =>
        [
            .. Of(wheel.Seat), .. wheel.Barrel.SelectMany(Of), wheel.BarrelWall.Index, .. wheel.Disc.SelectMany(Of), wheel.DiscWall.Index,
        ],
        PartForm.Scanned scanned => Of(scanned.Shift),
        PartForm.Hose hose => [.. Of(hose.Upper.At), .. Of(hose.Lower.At), hose.FreeLength.Index, hose.OutsideDiameter.Index],
        PartForm.Link link => [.. Of(link.First.At), .. Of(link.Second.At), link.OutsideDiameter.Index],
        PartForm.Shock shock => [.. Of(shock.Upper.At), .. Of(shock.Lower.At), shock.Closed.Index, shock.Open.Index, .. Of(shock.Sleeves)],
        PartForm.Shaft shaft => [.. Of(shaft.First.At), .. Of(shaft.Second.At), .. Of(shaft.Sleeves)],
        PartForm.Coil coil => [.. Of(coil.Lower.At), .. Of(coil.Upper.At), coil.OutsideDiameter.Index, coil.Wire.Index],
        PartForm.BumpStop stop => [.. Of(stop.Frame.At), .. Of(stop.Axle.At), stop.Height.Index, stop.Crush.Index],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>True for a part that ends the travel.</summary>
    public static bool IsStop(Part part) => part.Form is PartForm.Shock or PartForm.BumpStop;

    private static IEnumerable<int> Of(MeasuredPoint point) => [point.X.Index, point.Y.Index, point.Z.Index];

    private static IEnumerable<int> Of(MeasuredLength? length) => length is { } typed ? [typed.Index] : [];

    private static IEnumerable<int> Of(ProfileCorner corner) => [corner.Radius.Index, corner.Along.Index];

    private static IEnumerable<int> Of(WheelSeat seat) => seat.OtherHub is { } other ? Of(seat.Hub).Concat(Of(other)) : Of(seat.Hub);

    private static IEnumerable<int> Of(Sleeves? sleeves) =>
        sleeves is null ? [] : [sleeves.TubeDiameter.Index, sleeves.TubeLength.Index, sleeves.RodDiameter.Index, sleeves.RodLength.Index];
}
