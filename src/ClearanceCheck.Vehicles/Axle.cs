using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>An axle with its layout: the points it hangs on and how far its wheels are looked at.</summary>
public sealed record Axle
{
    /// <summary>The layout of an axle that was measured at several wheel positions instead of its links.</summary>
    public const string GuidedLayout = "positions";

    public required string Name { get; init; }

    /// <summary>The layout's id in the catalogue of layouts.</summary>
    public required string Layout { get; init; }

    /// <summary>The layout's points by name.</summary>
    public required ImmutableSortedDictionary<string, MeasuredPoint> Points { get; init; }

    /// <summary>Lengths of the layout that are no points, by name: half of a leaf spring's clamp, the length of an arm.</summary>
    public ImmutableSortedDictionary<string, MeasuredLength> Figures { get; init; } = ImmutableSortedDictionary<string, MeasuredLength>.Empty;

    /// <summary>How its wheels are steered; null for an axle that is not.</summary>
    public Steering? Steering { get; init; }

    /// <summary>Its toe as it was read; null when nobody read it.</summary>
    public ToeReading? Toe { get; init; }

    /// <summary>Its anti-roll bar where one is connected; null for an axle without, or one that was disconnected.</summary>
    public AntiRollBar? Bar { get; init; }

    /// <summary>How far the axle winds up under drive and braking, rad about the vehicle's left axis; null where that is not looked at.</summary>
    public WrapRange? Wrap { get; init; }

    /// <summary>Bodies of a free layout, without the axle's name; empty for other layouts, which bring their own.</summary>
    public required ImmutableArray<string> FreeBodies { get; init; }

    /// <summary>Bodies of a free layout that the wheels' travels are read on, left and right, with the axle's name; empty where those are what the wheels are bolted to.</summary>
    public ImmutableArray<string> FreeTravelBodies { get; init; } = [];

    /// <summary>Joints of a free layout, spelled out.</summary>
    public required ImmutableArray<FreeJoint> FreeJoints { get; init; }

    public required Wheel Left { get; init; }

    public required Wheel Right { get; init; }

    /// <summary>The state in which the layout's points were measured.</summary>
    public string MeasuredIn { get; init; } = "";

    /// <summary>How it stood in the other states in which points on it were measured, by state.</summary>
    public ImmutableSortedDictionary<string, AxleState> OtherStates { get; init; } = ImmutableSortedDictionary<string, AxleState>.Empty;

    /// <summary>Points of the layout that were measured once more in a second state.</summary>
    public ImmutableArray<ComparedPoint> ComparedPoints { get; init; } = [];

    /// <summary>True for an axle that goes where it was seen: its compared points are what moves it.</summary>
    public bool IsGuided => Layout == GuidedLayout;

    /// <summary>How far below ride height each wheel is looked at, mm, positive.</summary>
    public required MeasuredLength DroopLimit { get; init; }

    /// <summary>How far above ride height each wheel is looked at, mm, positive.</summary>
    public required MeasuredLength BumpLimit { get; init; }

    /// <summary>True where the layout's points, and so the wheels, were measured at ride height.</summary>
    public bool IsMeasuredAtRide => Left.HubToFenderMeasured is null && Right.HubToFenderMeasured is null;

    /// <summary>The body of a free layout that a wheel's travel is read on.</summary>
    public string FreeTravelBody(bool isLeft) =>
        FreeTravelBodies.IsDefaultOrEmpty ? (isLeft ? Left : Right).Body : FreeTravelBodies[isLeft ? 0 : 1];

    /// <summary>Travels of both wheels in a state other than that of the layout's points, mm, bump positive.</summary>
    public (double LeftMm, double RightMm) TravelsIn(AxleState state, ReadOnlySpan<double> parameters) =>
        (Left.TravelMm(state.LeftHubToFender, parameters), Right.TravelMm(state.RightHubToFender, parameters));
}

/// <summary>One wheel of an axle: its hub and its hub-to-fender readings.</summary>
/// <param name="Body">The body that the wheel is bolted to, with the axle's name: <c>rear/axle</c>, <c>front/knuckle-left</c>.</param>
/// <param name="HubToFenderMeasured">In the state in which the points were measured; null when that was ride height.</param>
/// <param name="HubToFenderRide">At ride height; null when nobody read it (then the measured state is ride height).</param>
public sealed record Wheel(string Body, MeasuredPoint Hub, MeasuredLength? HubToFenderMeasured, MeasuredLength? HubToFenderRide)
{
    /// <summary>Travel of the wheel in the measured state, mm, bump positive.</summary>
    public double MeasuredTravelMm(ReadOnlySpan<double> parameters) => TravelMm(HubToFenderMeasured, parameters);

    /// <summary>Travel of the wheel where that hub-to-fender height was read, mm, bump positive; 0 where none was, which is ride height.</summary>
    public double TravelMm(MeasuredLength? hubToFender, ReadOnlySpan<double> parameters) =>
        HubToFenderRide is { } ride && hubToFender is { } read ? ride.At(parameters) - read.At(parameters) : 0;
}
