using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>Travel tables of invented axles.</summary>
internal static class SampleTravel
{
    /// <summary>A solid rear axle with two shocks; the last pose could not be worked out.</summary>
    /// <param name="leftShockMm">Length of the left shock when hanging.</param>
    public static TravelTable Rear(double leftShockMm = 526.4)
    {
        TravelEnd shock = new("rear-shock-left at full length", "Left rear shock at full length", true);
        TravelEnd none = new("end of the travel looked at, rear.right bump", "no stop in the file: the travel looked at ends here", false);
        return new TravelTable(
            "rear",
            [
                new("left.travel", "left wheel, travel", "mm"), new("right.travel", "right wheel, travel", "mm"),
                new("left.hub-to-fender", "left wheel, hub to fender", "mm"),
                new("left.camber", "left wheel, camber", "deg"), new("left.toe", "left wheel, toe", "deg"), new("left.steer", "left wheel, steer angle", "deg"),
                new("axle.shift", "axle shifted left", "mm"), new("rear-shock-left.length", "Left rear shock, length", "mm"),
            ],
            [
                new("ride-height", "ride height", "stopped", [], [new TravelPassed("rear-shock-left at full length", "Left rear shock at full length", 4.2)], [0, 0, 640, 0, 0.1, -0.1, 0, 524.1]),
                new("full-droop", "both wheels hang", "reached", [shock, none], [], [-107.2455, -105.3, 747.2455, -0.0362, 0.04, -0.04, 15.9, leftShockMm]),
                new("full-bump", "both wheels up", "not-solved", [], [], [.. Enumerable.Repeat<double?>(null, 8)]),
            ],
            [
                new("both-down", "both wheels down", "mm", 180, false, [new("rear-shock-left at full length", "Left rear shock at full length", 0, 4.2), new("b", "Right rear shock at full length", 105.3, 0)]),
                new("both-up", "both wheels up", "mm", 160, true, []),
                new("left-down", "left wheel down alone", "mm", 180, false, [new("rear-shock-left at full length", "Left rear shock at full length", 134.5, 0)]),
            ]);
    }

    /// <summary>A steered axle whose wheels nobody measured at ride height, and which has a shaft that was measured at one of its two joints.</summary>
    public static TravelTable SteeredFront() => new(
        "front",
        [
            new("left.travel", "left wheel, travel", "mm"), new("right.travel", "right wheel, travel", "mm"), new("steer", "steering", "deg"),
            new("left.steer", "left wheel, steer angle", "deg"), new("front-shaft.length", "Front driveshaft, length", "mm"), new("front-shaft.first-angle", "Front driveshaft, angle of the joint at the chassis", "deg"),
            new("front-shaft.second-angle", "Front driveshaft, angle of the joint at the front axle: not measured, no point ahead of it in the file", "deg"),
            new("front-shaft.second-turn", "Front driveshaft, line turned against the front axle since ride height", "deg"),
        ],
        [new("lock-left", "ride height, steered hard left", "reached", [new("steering lock left", "steering lock left", true)], [], [0, 0, 31, 31.5, 812.3, 4.994, null, 0])],
        [new("steer-left", "steered to the left", "deg", 35, false, [new("tab", "Left steering stop", 31, 0)])]);
}
