using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Reporting.Tests.Samples;

/// <summary>Findings of the invented vehicle; geometry and numbers agree with each other.</summary>
internal static class SampleFindings
{
    public static readonly QuantityCard Gap = new("gap", "gap", "The smallest distance between the two surfaces.", "mm");
    public static readonly QuantityCard Slack = new("hose-slack", "hose slack", "How much longer the hose is than the straight line between its ends.", "%");
    private static readonly SourceCard NoSource = new("common-practice", "none", "Shop practice, brake line to bare pipe.");
    private static readonly PartCard RearLine = new("rear-line", "rear brake line", "brake-line", "rear/axle");
    private static readonly PartCard RearLeftTire = new("rear-left-tire", "rear left tire", "tire", "rear/left-wheel");
    private static readonly PartCard Tailpipe = new("tailpipe", "tailpipe", "exhaust-pipe", "exhaust");

    public static Finding LineNearTailpipe() => Of("brake-line-near-exhaust", "Brake line too close to the exhaust", Severity.Danger, Verdict.Fails, Gap, 50, RearLine, Tailpipe) with
    {
        Consequence = "The fluid boils or the line melts, and braking is lost.",
        Advice = "Move the clip outboard or fit a heat shield; keep clear of the hose.",
        HandCheck = "Wheels hanging, then at ride height; measure across the narrowest place, pipe cold.",
        Checked = "By hand 17 mm (11/16 in) was found, by R. A.; 18.2 mm was expected.",
        Recheck = ["gap", "hose-slack"],
        Assumes = ["The tailpipe's diameter, 63.5 mm, was taken from the parts list, not measured."],
        Evidence = Near(18.2, 3.1, Chain(2.4, (-900, 380, 640), (-1120, 405, 655), (-1320, 470, 648), (-1500, 520, 640)),
            Chain(31.75, (-900, 470, 560), (-1150, 455, 595), (-1400, 430, 600), (-1700, 420, 560)), "rear.left", 88, Bump) with
        {
            Basins =
            [
                new BasinCard(18.2, 3.1, new PoseCard([new PoseCoordinate("rear.left", 88, "mm", "hub to fender rear left 432 mm (17 in), 88 mm into bump")], [])),
                new BasinCard(19.7, 3.3, new PoseCard([new PoseCoordinate("rear.left", 61, "mm", "hub to fender rear left 459 mm (18-1/16 in), 61 mm into bump")], [])),
            ],
        },
    };

    public static Finding HoseTooShort() => Of("brake-hose-too-short", "Brake hose pulled straight", Severity.Danger, Verdict.Fails, Slack, 4, new PartCard("rear-hose", "rear brake hose", "brake-hose", "chassis")) with
    {
        Consequence = "The hose tears off as the axle drops, and braking is lost.",
        Advice = "Fit a hose at least 25 mm longer, or limit the droop with straps.",
        HandCheck = "Axle hanging on its stops, one side at a time: the hose must still hang in a bow.",
        Recheck = ["hose-slack"],
        Evidence = Hose(1.26, 0.9),
    };

    public static Finding TireNearLine() => Of("tire-near-brake-line", "Tire too close to a brake line", Severity.Warning, Verdict.Undecided, Gap, 25, RearLeftTire, RearLine) with
    {
        Consequence = "The tire rubs through the line.",
        Advice = "Fit a longer bump stop or move the line.",
        HandCheck = "Rear left wheel up on its bump stop; measure tire to line.",
        Missing = "measure the rear left tire's sidewall within 2 mm",
        Evidence = Near(25.6, 3.2, Chain(120, (-130, 760, 300), (0, 770, 250), (130, 760, 300)), Chain(2.4, (-400, 560, 380), (0, 620, 400), (300, 640, 420)), "rear.left", 80, Bump),
    };

    public static Finding HoseNotMeasured() => Of("brake-hose-too-short", "Brake hose pulled straight", Severity.Danger, Verdict.NotEvaluated, Slack, 4, new PartCard("front-left-hose", "front left brake hose", "brake-hose", "chassis")) with
    {
        Consequence = "The hose tears off as the wheel drops, and braking is lost.",
        Missing = "the free length of the front left brake hose is missing",
        HandCheck = "Front wheels hanging, steering at both locks: the hose must still hang in a bow.",
    };

    public static Finding LineTouchesShock() => Of("parts-touch", "Parts touch while moving", Severity.Caution, Verdict.Fails, Gap, 0, new PartCard("vent-hose", "axle vent hose", "vent-hose", "chassis"), new PartCard("rear-left-shock", "rear left shock", "shock", "rear/axle")) with
    {
        Consequence = "The hose chafes through and lets water into the axle.",
        Advice = "Clip the hose to the frame.",
        Evidence = Near(-4.4, 1.2, Chain(6, (-300, 400, 500), (-100, 430, 700)), Chain(30, (-200, 420, 300), (-180, 400, 900)), "rear.left", -95, Droop),
    };

    public static Finding WireNearPipe() => Of("wire-near-exhaust", "Wire close to the exhaust", Severity.Notice, Verdict.Fails, Gap, 50, new PartCard("sensor-wire", "wheel sensor wire", "wire", "chassis"), Tailpipe) with
    {
        Consequence = "The wire stiffens and breaks.",
        Evidence = Near(49.6, 0.1, Chain(3, (-900, 380, 640), (-1500, 380, 640)), Chain(31.75, (-900, 470, 640), (-1500, 464.35, 640)), "", 0, ""),
    };

    public static Finding FuelLineNearPipe() => Of("fuel-line-near-exhaust", "Fuel line too close to the exhaust", Severity.Danger, Verdict.Conforms, Gap, 25, new PartCard("fuel-line", "fuel line", "fuel-line", "chassis"), Tailpipe) with
    {
        HandCheck = "At ride height, pipe cold.",
        Limit = new LimitCard(25, null, ["shielded"]),
        Evidence = Near(62.3, 3.0, Chain(4, (-900, 340, 640), (-1500, 340, 640)), Chain(31.75, (-900, 440, 640), (-1500, 440, 640)), "rear.left", 40, Bump),
    };

    public static Finding LineNearFrame() => Of("brake-line-bend", "Brake line bent too far", Severity.Caution, Verdict.Conforms, new QuantityCard("joint-angle", "joint angle", "How far the joint is bent.", "deg"), 0, RearLine) with
    {
        Limit = new LimitCard(null, 22, []),
        Source = new SourceCard("published", "from-memory", "Maker's sheet."),
        Evidence = Near(14.2, 0.4, Chain(4, (-900, 340, 640), (-1500, 340, 640)), Chain(4, (-900, 440, 640), (-1500, 440, 640)), "rear.left", 40, Bump),
    };

    /// <summary>A tire under its inner fender, a level plate: the gap is from the tire's top to the plate's lower side.</summary>
    /// <param name="gap">Below zero the two overlap.</param>
    public static Finding TireNearFender(double gap)
    {
        var top = new Vector3d(-1500, 770, 820);
        DrawnPart tire = SampleShapes.Tire(top - (Vector3d.UnitZ * SampleShapes.TireRadius));
        DrawnPart fender = SampleShapes.Plate(top + (Vector3d.UnitZ * gap), 260, 170);
        return Of("tire-near-body", "Tire too close to the body", Severity.Warning, gap < 0 ? Verdict.Fails : Verdict.Conforms, Gap, 0, RearLeftTire, new PartCard("inner-fender", "rear left inner fender", "body-panel", "chassis")) with
        {
            Consequence = "The tire cuts itself on the edge and goes flat at speed.",
            Advice = "Fit a longer bump stop, or cut and fold the fender.",
            HandCheck = "Rear left wheel up on its bump stop, springs out.",
            Evidence = Shaped(gap, 3.1, tire, fender, top, top + (Vector3d.UnitZ * gap)),
        };
    }

    /// <summary>A canister, turned by 20 degrees about x, beside a brake line that runs along its lower edge's side.</summary>
    public static Finding BoxNearLine()
    {
        (double c, double s) = (0.9396926, 0.3420201);
        Vector3d outward = new(0, c, s), upward = new(0, -s, c);
        Vector3d corner = new(-700, 300, 500);
        DrawnPart box = SampleShapes.Box(corner, Vector3d.UnitX * 160, outward * -90, upward * 70);
        Vector3d face = corner + (Vector3d.UnitX * 80) + (upward * 35);
        Vector3d line = face + (outward * (8 + 2.4));
        return Of("brake-line-near-moving", "Brake line too close to a part", Severity.Warning, Verdict.Fails, Gap, 10, RearLine, new PartCard("canister", "fuel vapor canister", "canister", "chassis")) with
        {
            Consequence = "The line chafes through, and braking is lost.",
            Advice = "Fit a clip.",
            Evidence = Shaped(8, 1.5, Chain(2.4, (line.X - 300, line.Y, line.Z), (line.X + 40, line.Y, line.Z), (line.X + 300, line.Y + 60, line.Z + 40)) with { PartId = "first" }, box, line - (outward * 2.4), face),
        };
    }

    /// <summary>A scanned lump over a tailpipe, with what was found about shields.</summary>
    public static Finding LumpNearPipe()
    {
        var lowest = new Vector3d(-1000, 430, 700);
        return Of("sensor-near-exhaust", "Sensor too close to the exhaust", Severity.Caution, Verdict.Fails, Gap, 50, new PartCard("level-sensor", "ride level sensor", "sensor", "chassis"), Tailpipe) with
        {
            Consequence = "The sensor melts.",
            Shields = ["Floor shield does not stand between the two where the two come nearest, so the limit without a shield holds."],
            Evidence = Shaped(21, 2.2, SampleShapes.Lump(lowest + (Vector3d.UnitZ * 40), 40),
                Chain(31.75, (-1400, 430, 647.25), (-600, 430, 647.25)) with { PartId = "second" }, lowest, lowest - (Vector3d.UnitZ * 21)),
        };
    }

    /// <summary>Two parts that may touch, and seem to overlap by less than the error of a tape.</summary>
    public static Finding ContactMeant(double gap)
    {
        var at = new Vector3d(-700, 380, 600);
        return Of("meant-contact-too-deep", "Parts that are meant to touch run into each other", Severity.Warning, gap < -2 ? Verdict.Fails : Verdict.Conforms, Gap, -2, new PartCard("pad", "bump stop pad", "plate", "rear/axle"), new PartCard("perch", "bump stop perch", "plate", "chassis")) with
        {
            Evidence = Shaped(gap, 0.1, SampleShapes.Box(at, new Vector3d(60, 0, 0), new Vector3d(0, 60, 0), new Vector3d(0, 0, -40)),
                SampleShapes.Box(at + new Vector3d(-20, -20, gap), new Vector3d(100, 0, 0), new Vector3d(0, 100, 0), new Vector3d(0, 0, 25)), at + new Vector3d(30, 30, 0), at + new Vector3d(30, 30, gap)),
        };
    }

    private const string Bump = "hub to fender rear left 432 mm (17 in), 88 mm into bump";
    private const string Droop = "hub to fender rear left 615 mm (24-3/16 in), 95 mm into droop";

    private static Finding Of(string rule, string title, Severity severity, Verdict verdict, QuantityCard quantity, double atLeast, params PartCard[] parts) => new()
    {
        Id = rule + "--" + string.Join("--", parts.Select(p => p.Id).Order(StringComparer.Ordinal)),
        Rule = rule,
        Title = title,
        Severity = severity,
        Verdict = verdict,
        Recheck = [],
        Parts = [.. parts],
        Quantity = quantity,
        Limit = new LimitCard(atLeast, null, []),
        Source = NoSource,
        Assumes = [],
    };

    private static DrawnPart Chain(double radius, params (double X, double Y, double Z)[] points) =>
        new("part", [.. points.Select(p => new Vector3d(p.X, p.Y, p.Z))], radius, false);

    /// <summary>Evidence for two thick chains; the second is shifted so that their distance is the value.</summary>
    private static Evidence Near(double value, double uncertainty, DrawnPart first, DrawnPart second, string coordinate, double at, string words)
    {
        (Vector3d a, Vector3d b) = ChainDistance.Nearest(first, second);
        Vector3d across = (b - a).NormalizedOr(Vector3d.UnitZ);
        Vector3d shift = (across * (value + first.RadiusMm + second.RadiusMm)) - (b - a);
        DrawnPart moved = second with { Points = [.. second.Points.Select(p => p + shift)] };
        bool isStill = coordinate.Length == 0;
        return new Evidence
        {
            Value = value,
            Bound = value - 0.35,
            BoundKind = isStill ? Grade.Proven : Grade.Checked,
            StandardUncertainty = uncertainty / 2,
            CoverageFactor = 2,
            Pose = isStill ? new PoseCard([], []) : new PoseCard([new PoseCoordinate(coordinate, at, "mm", words), new PoseCoordinate("rear.right", -20, "mm", "hub to fender rear right 540 mm (21-1/4 in), 20 mm into droop")], at > 80 ? ["rear left bump stop"] : []),
            WitnessFirst = a + (across * first.RadiusMm),
            WitnessSecond = a + (across * (first.RadiusMm + value)),
            Basins = [],
            Readings = [new ReadingShare("parts/tailpipe/points/2", "point 2 of Tailpipe", 0.61, 3), new ReadingShare("parts/rear-line/points/1", "point 1 of Rear line", 0.24, 2)],
            Drawing = new DrawingCard([first with { PartId = "first" }, moved with { PartId = "second" }]),
            Plots = isStill ? [] : [Curve(value, at)],
            Cells = 1180,
        };
    }

    /// <summary>Evidence for parts that stand where they are, with their known nearest points.</summary>
    private static Evidence Shaped(double value, double uncertainty, DrawnPart first, DrawnPart second, Vector3d witnessFirst, Vector3d witnessSecond) =>
        Near(value, uncertainty, Chain(1, (0, 0, 0), (1, 0, 0)), Chain(1, (0, 0, 9), (1, 0, 9)), "rear.left", 88, Bump) with
        {
            WitnessFirst = witnessFirst,
            WitnessSecond = witnessSecond,
            Drawing = new DrawingCard([first, second]),
        };

    private static PlotCard Curve(double value, double at) => new("rear.left", "rear left wheel travel", "mm", at,
        [.. Enumerable.Range(0, 31).Select(i => -120 + (i * 8.0)).Select(x => new PlotPoint(x, value + (0.004 * (x - at) * (x - at)), x is >= -112 and <= 88))]);

    private static Evidence Hose(double value, double uncertainty)
    {
        ImmutableArray<Vector3d> hose = [new(-300, 200, 700), new(-290, 215, 640), new(-270, 235, 560), new(-240, 250, 470), new(-215, 252, 400), new(-200, 250, 360)];
        return new Evidence
        {
            Value = value,
            Bound = value - 0.1,
            BoundKind = Grade.Sampled,
            StandardUncertainty = uncertainty / 2,
            CoverageFactor = 2,
            Pose = new PoseCard([new PoseCoordinate("rear.left", -112.4, "mm", "rear left wheel hanging, hub to fender 632 mm (24-7/8 in)")], ["rear shock fully out"]),
            WitnessFirst = hose[0],
            WitnessSecond = hose[^1],
            Basins = [],
            Readings = [new ReadingShare("parts/rear-hose/length", "length of Rear hose", 0.9, 5)],
            Drawing = new DrawingCard([new DrawnPart("rear-hose", hose, 5.5, false), new DrawnPart("rear-hose", [hose[0], hose[^1]], 0, true)]),
            Plots = [new PlotCard("rear.left", "rear left wheel travel", "mm", -112.4, [.. Enumerable.Range(0, 26).Select(i => -112.4 + (i * 8.0)).Select(x => new PlotPoint(x, value + (0.06 * (x + 112.4)), true))])],
            Cells = 210,
        };
    }
}
