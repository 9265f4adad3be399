using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>The cautions of the report. Common practice of workshops, no source.</summary>
internal static class CautionCatalogue
{
    /// <summary>Travel in mm from which a wheel counts as hanging or jacked up; common practice, no source.</summary>
    private const double FarMm = 40;

    private static readonly string[] HeatWords = ["exhaust", "pipe", "muffler", "catalyst", "manifold"];

    /// <summary>For work on the vehicle.</summary>
    public static ImmutableArray<Caution> AtWork { get; } =
    [
        new("On a two-post lift, never push an axle up with a jack: the vehicle can leave the arms.", IsPosedWithTravel),
        new("Nobody sits in a vehicle while it goes up, comes down or stands on a lift.", _ => false),
        new("Never let an axle hang on brake hoses, wires or joints. Watch every hose while you lower the axle into droop.", Hangs),
        new("A compressed coil can fly out. Stand aside and hold it captive before you let the axle down.", Hangs),
        new("Turning lock to lock: engine off, one person gives the word, hands out of stops, joints and steering.", Steers),
        new("No gear and no engine drive while wheels hang.", _ => false),
        new("Before the steering shaft comes apart, lock the steering wheel. If it spins, the ribbon wire behind it tears.", _ => false),
        new("Engine running indoors: lead the exhaust gas outside.", _ => false),
        new("Put tape or clay on an exhaust only when it is cold.", IsHot),
    ];

    /// <summary>For the first drive.</summary>
    public static ImmutableArray<Caution> FirstDrive { get; } =
    [
        new("Local law and licensed practice come before anything in this report.", _ => false),
        new("Drive alone, belted, on closed ground.", _ => false),
        new("Standing still first: press the brake hard and hold it. The pedal must not sink.", _ => false),
        new("Test the brakes within the first 10 m.", _ => false),
        new("Then full lock both ways, then one wheel up on a ramp, then slow driving.", _ => false),
        new("After 1 to 2 km stop and look under it. Only then the road.", _ => false),
        new("Stop at once on a smell, a pull to one side or a shimmy.", _ => false),
    ];

    /// <summary>The cautions to be said at a finding, since somebody will set its pose to check it by hand.</summary>
    public static IEnumerable<Caution> For(Finding finding) => AtWork.Where(caution => caution.MattersTo(finding));

    private static bool Steers(Finding finding) => Coordinates(finding).Any(c => c.Unit == "deg" && c.Name.EndsWith("steer", StringComparison.Ordinal));

    private static bool Hangs(Finding finding) => Coordinates(finding).Any(c => c.Unit == "mm" && c.Value < -FarMm);

    private static bool IsPosedWithTravel(Finding finding) => Coordinates(finding).Any(c => c.Unit == "mm" && c.Value > FarMm);

    private static bool IsHot(Finding finding) => finding.Parts.Any(part => HeatWords.Any(word => part.Kind.Contains(word, StringComparison.Ordinal)));

    private static ImmutableArray<PoseCoordinate> Coordinates(Finding finding) => finding.Evidence?.Pose.Coordinates ?? [];
}
