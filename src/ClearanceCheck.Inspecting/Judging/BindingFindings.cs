using System.Collections.Immutable;
using System.Globalization;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Evidencing;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Reach;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Rules;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Units;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Axles that go where their stops let them only while a bushing gives more than one can: they bind.</summary>
/// <remarks>
/// Not a fence: how stiff rubber is, is a guess, arms and frames bend, and a real axle does go there. So every pose stays in the pose space, and the
/// finding says how far which bushing gives and what force holds the wheels. Looked at in the named poses of the travel table only.
/// </remarks>
internal sealed class BindingFindings(VehicleMotion motion, ImmutableArray<ImmutableArray<ExtremePose>> poses, double coverageFactor)
{
    /// <summary>What stands for the rule: it is the program's own, of no library.</summary>
    public const string Rule = "axle-binds";

    /// <summary>More than this no rubber bushing of a link or arm gives without harm, mm. Common practice, no source.</summary>
    public const double MostMm = 8;

    // The give follows the geometry; stiffnesses that are guesses shift it between bushings by some such share.
    private const double GuessShare = 0.2;
    private const double GravityMPerS2 = 9.81;

    /// <summary>One finding for each axle that moves only by its bushings.</summary>
    public IEnumerable<Finding> All() =>
        motion.Modules.Zip(poses).Where(m => m.First.Motion.Linkage.IsSoft).Select(m => Of(m.First, m.Second)).OfType<Finding>();

    private Finding? Of(AxleModule module, ImmutableArray<ExtremePose> own)
    {
        (Joint Joint, SoftLoad Load, ImmutableArray<double> Pose, LinkageLoads All)? worst = null;
        foreach (ExtremePose extreme in own)
        {
            if (!extreme.Solved.IsSolved) continue;
            LinkageLoads loads = LinkageLoads.Of(module.Motion.Linkage, extreme.Solved.Bodies.Span, [.. extreme.Pose]);
            foreach (SoftLoad load in loads.Soft)
            {
                Joint joint = module.Motion.Linkage.Joints.First(j => j.Name == load.Joint);
                // A leaf spring is made to bend.
                if (joint is Joint.Leaf || (worst is { } known && load.GiveMm.Length <= known.Load.GiveMm.Length)) continue;
                worst = (joint, load, extreme.Pose, loads);
            }
        }

        return worst is var (found, give, pose, all) ? Finding(module, found, give, pose, all) : null;
    }

    private Finding Finding(AxleModule module, Joint joint, SoftLoad load, ImmutableArray<double> pose, LinkageLoads loads)
    {
        string axle = module.Axle.Name;
        double value = load.GiveMm.Length, uncertainty = GuessShare * value;
        Verdict verdict = value - (coverageFactor * uncertainty) > MostMm ? Verdict.Fails : value + (coverageFactor * uncertainty) > MostMm ? Verdict.Undecided : Verdict.Conforms;
        SolvedPose solved = module.Motion.At(pose.AsSpan());
        (Vector3d housing, Vector3d pin) = Ends(joint, solved);
        double held = loads.Settings.Where(s => s.Setting.EndsWith("travel", StringComparison.Ordinal)).Select(s => Math.Abs(s.Load)).DefaultIfEmpty(0).Max();
        var card = new PartCard($"{axle}-axle", $"The {axle} axle", "axle", $"{axle}/axle");
        return new Finding
        {
            Id = $"{Rule}--{axle}",
            Rule = Rule,
            Title = "An axle goes no farther without forcing its bushings",
            Severity = Severity.Warning,
            Verdict = verdict,
            Consequence = $"To get there {Plain(load.Joint)} has to give {Millimetres(value)}, and some {Force(held)} at one wheel hold it there. Bushings tear, bolts and brackets take the rest, and the wheels may stop short of where the stops are.",
            Advice = "Look whether the wheels get there at all. Where they do, look for what bends: arms, brackets, bushings. Where they don't, the stops are not what ends the travel.",
            HandCheck = "With the axle in this pose, measure how far the bolt stands off the middle of this bushing.",
            Recheck = ["gap"],
            Parts = [card],
            Quantity = new QuantityCard("bushing-give", "bushing give", "how far the most strained bushing has to give, in the poses of the travel table", "mm"),
            Limit = new LimitCard(null, MostMm, []),
            Source = new SourceCard("common-practice", "none", "No source: a rubber bushing of a link or arm gives a few millimetres; more than this is beyond all of them."),
            Missing = verdict == Verdict.Undecided ? $"look how far {Plain(load.Joint)} gives with the axle in this pose" : null,
            Assumes = ["How stiff the bushings are was not measured: common practice, no source."],
            Evidence = new Evidence
            {
                Value = value,
                Bound = value,
                BoundKind = Grade.Sampled,
                StandardUncertainty = uncertainty,
                CoverageFactor = coverageFactor,
                Pose = new PoseCard([.. pose.Select((v, d) => Card(module, d, v))], []),
                WitnessFirst = housing,
                WitnessSecond = pin,
                Basins = [],
                Readings = [],
                Drawing = new DrawingCard([new DrawnPart(card.Id, [housing, pin], 0, true)]),
                Plots = [],
                Cells = 0,
            },
        };
    }

    private Results.PoseCoordinate Card(AxleModule module, int coordinate, double value) => new(
        module.CoordinateNames[coordinate], CoordinateCards.Value(module, coordinate, value), CoordinateCards.Unit(module, coordinate),
        Words.Coordinate(module, coordinate, value, motion.Parameters.Span));

    private static (Vector3d First, Vector3d Second) Ends(Joint joint, SolvedPose solved) => joint switch
    {
        Joint.Bushing b => (solved[b.FirstBody].Apply(b.Point), solved[b.SecondBody].Apply(b.Point)),
        Joint.Spring s => Stretched(solved[s.FirstBody].Apply(s.FirstPoint), solved[s.SecondBody].Apply(s.SecondPoint), s.LengthMm),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // Where a link of its own length would end, and where it has to end.
    private static (Vector3d First, Vector3d Second) Stretched(Vector3d from, Vector3d to, double lengthMm) =>
        (from + (lengthMm * (to - from).NormalizedOr(Vector3d.UnitX)), to);

    private static string Plain(string joint) => "the " + joint.Replace('-', ' ');

    private static string Millimetres(double value) => LengthFormat.Both(Length.FromMillimetres(value));

    // In what a person can feel: kg that would have to hang there.
    private static string Force(double newton)
    {
        double step = newton < 1000 ? 50 : 100, kg = Math.Round(newton / GravityMPerS2 / 10) * 10;
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(newton / step) * step:0} N (the weight of {kg:0} kg)");
    }
}
