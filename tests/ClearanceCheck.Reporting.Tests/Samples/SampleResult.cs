using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>An invented vehicle with a finding of every verdict and severity.</summary>
internal static class SampleResult
{
    /// <summary>Every verdict, every severity, every section.</summary>
    public static InspectionResult Whole() => Small() with
    {
        Findings =
        [
            SampleFindings.LineNearTailpipe(),
            SampleFindings.HoseTooShort(),
            SampleFindings.HoseNotMeasured(),
            SampleFindings.TireNearLine(),
            SampleFindings.LineTouchesShock(),
            SampleFindings.WireNearPipe(),
            SampleFindings.FuelLineNearPipe(),
            SampleFindings.LineNearFrame(),
        ],
        Decision = new DecisionCard(
            DecisionKind.Held,
            [
                "DANGER fails: the rear brake line comes within 18 mm of the tailpipe; 50 mm are wanted.",
                "DANGER could not be checked: how long the front left brake hose is.",
            ],
            [
                new ActionLine("Move the rear brake line outboard, at least 32 mm further from the tailpipe, or fit a heat shield.", "brake-line-near-exhaust--rear-line--tailpipe"),
                new ActionLine("Fit a rear brake hose at least 25 mm longer.", "brake-hose-too-short--rear-hose"),
                new ActionLine("Measure the free length of the front left brake hose.", "brake-hose-too-short--front-left-hose"),
                new ActionLine("Measure the rear left tire's sidewall again, within 2 mm.", "tire-near-brake-line--rear-left-tire--rear-line"),
                new ActionLine("Inspect again.", null),
            ]),
        NotInspected =
        [
            new NotInspectedItem("front axle", "no points were given for it"),
            new NotInspectedItem("rear driveshaft", "it is not in the file"),
        ],
        MatchedNothing = [new UnmatchedRule("winch-cable-near-exhaust", "Winch cable too close to the exhaust", "No part of this vehicle is a winch cable.")],
        Exempt = [new ExemptZone(["rear-hose", "rear-line"], "the hose's upper ferrule", 30, "they are screwed together there")],
        Assumptions =
        [
            new Assumption("parts/rear-hose/within", "No give or take was typed; 5 mm is used."),
            new Assumption("axles/rear/points/right/hub", "Mirrored from the left side."),
        ],
        Reach =
        [
            new ReachCard("rear.left", "rear left wheel travel", "mm", -112.4, 88, "rear shock fully out", "rear bump stop"),
            new ReachCard("rear.right", "rear right wheel travel", "mm", -105.3, 0.4, "rear shock fully out", "rear bump stop"),
        ],
        Travel = [SampleTravel.Rear(), SampleTravel.SteeredFront()],
        Measurements =
        [
            new MeasurementRow("parts/tailpipe/points/0", "-1240 mm, 412 mm, 618 mm", new Vector3d(-1240, 412, 618), null, 3, false),
            new MeasurementRow("parts/rear-hose/length", "15-3/4 in", null, 400.05, 5, true),
        ],
    };

    /// <summary>One finding, one of each list at most: what the golden file is made from.</summary>
    public static InspectionResult Small() => new()
    {
        Vehicle = new VehicleCard
        {
            Name = "Harrow Ridgeback 4x4, 1997",
            Job = "100 mm lift, 35 in tires",
            Lift = "long-arm coils, 100 mm",
            Date = "2031-04-12",
            Inspector = "R. Amsel",
            Odometer = "214 300 km",
            Drive = "left-hand drive",
            Load = "driver, tools 40 kg",
            Fuel = "half a tank",
            Datum = "Zero is the ground under the rear axle's middle; level by the frame rails.",
        },
        Scope = ["rear"],
        Library = new LibraryCard("base", "1.0.0", "9f3c5d0a61b2470e8c9d1f2a3b4c5d6e7f8091a2b3c4d5e6f708192a3b4c5d6e", 24, []),
        Decision = new DecisionCard(
            DecisionKind.Held,
            ["DANGER fails: the rear brake line comes within 18 mm of the tailpipe; 50 mm are wanted."],
            [new ActionLine("Move the rear brake line outboard.", "brake-line-near-exhaust--rear-line--tailpipe"), new ActionLine("Inspect again.", null)]),
        Findings = [SampleFindings.LineNearTailpipe()],
        Record = SampleRecord.Whole(),
        NotInspected = [new NotInspectedItem("front axle", "no points were given for it")],
        MatchedNothing = [],
        Exempt = [],
        Assumptions = [],
        Reach = [],
        Travel = [],
        Measurements = [],
        Provenance = new Provenance
        {
            ProgramVersion = "0.1.0",
            Inputs = [new InputFile("ridgeback.yaml", 18204, "1b4f0e9851971998e732078544c96b36c3d01cedf7caa332359d6f1d83567014")],
            Settings = [new Setting("coverage factor", "2"), new Setting("search step", "1 mm")],
            Cells = 48210,
            Solves = 9120,
            PairsAsked = 42,
            PairsRefusedAtRoot = 19,
            ReportId = "7c21f0a93be4",
        },
    };

    /// <summary>Findings on parts of every shape, apart, touching and overlapping.</summary>
    public static InspectionResult Shapes() => Small() with
    {
        Findings =
        [
            SampleFindings.TireNearFender(-12), SampleFindings.BoxNearLine(), SampleFindings.LumpNearPipe(), SampleFindings.ContactMeant(-2.3),
            SampleFindings.TireNearFender(0) with { Id = "touching" }, SampleFindings.TireNearFender(18) with { Id = "apart" }, SampleFindings.ContactMeant(-1.6) with { Id = "meant" },
        ],
    };

    /// <summary>The whole vehicle without anything against it.</summary>
    public static InspectionResult Clear() => Whole() with
    {
        Decision = new DecisionCard(DecisionKind.Clear, [], [new ActionLine("Sign the first gate.", null)]),
        Findings = [SampleFindings.LineNearFrame(), SampleFindings.FuelLineNearPipe()],
        NotInspected = [],
        Assumptions = [],
    };
}
