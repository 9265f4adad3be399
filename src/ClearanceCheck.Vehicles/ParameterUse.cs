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
        PartForm.Hose hose => [.. Of(hose.Upper.At), .. Of(hose.Lower.At), hose.FreeLength.Index, hose.OutsideDiameter.Index],
        PartForm.Shock shock => [.. Of(shock.Upper.At), .. Of(shock.Lower.At), shock.Closed.Index, shock.Open.Index],
        PartForm.BumpStop stop => [.. Of(stop.Frame.At), .. Of(stop.Axle.At), stop.Height.Index, stop.Crush.Index],
        _ => [],
    };

    /// <summary>True for a part that ends the travel.</summary>
    public static bool IsStop(Part part) => part.Form is PartForm.Shock or PartForm.BumpStop;

    private static IEnumerable<int> Of(MeasuredPoint point) => [point.X.Index, point.Y.Index, point.Z.Index];
}
