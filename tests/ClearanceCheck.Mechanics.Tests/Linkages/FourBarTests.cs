using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>
/// A planar four-bar laid into a slanted plane: crank about the origin, ground along the plane's first axis. The crank's angle is set
/// by the height of its pin. First row of numbers (40 degrees): Norton, Design of Machinery, position chapter, from memory
/// (20.30 and 57.33 degrees open, -60.98 and -98.01 crossed); all others computed by an independent program, nine decimals.
/// </summary>
public sealed class FourBarTests
{
    private const double Degree = Math.PI / 180;
    private static readonly Vector3d Along = Vector3d.UnitX;
    private static readonly Vector3d Up = new(0, 0.6, 0.8);

    // Crank angle, coupler and rocker open, coupler and rocker crossed; degrees.
    private static readonly double[][] Small =
    [
        [40, 20.297882788, 57.324880070, -60.977966796, -98.004964078],
        [0, 36.336057515, 62.720387264, -36.336057515, -62.720387264],
        [20, 25.644550778, 55.103851972, -50.371985734, -79.831286927],
        [60, 18.376017664, 64.943481106, -65.202466556, -111.769929999],
        [80, 18.386469448, 74.915110428, -64.274983191, -120.803624170],
        [280, 64.274983191, 120.803624170, -18.386469448, -74.915110428],
        [300, 65.202466556, 111.769929999, -18.376017664, -64.943481106],
        [320, 60.977966796, 98.004964078, -20.297882788, -57.324880070],
        [340, 50.371985734, 79.831286927, -25.644550778, -55.103851972],
    ];

    private static readonly double[][] SmallBeyondTheTop =
    [
        [160, 29.517069988, 114.489903423, -40.873961701, -125.846795136],
        [100, 19.662805612, 85.658000303, -60.104202293, -126.099396984],
        [120, 21.964284311, 96.250423263, -54.168511815, -128.454650767],
        [140, 25.243051771, 106.037230396, -47.511126771, -128.305305396],
        [180, 34.771944032, 121.188622333, -34.771944032, -121.188622333],
        [220, 47.511126771, 128.305305396, -25.243051771, -106.037230396],
        [260, 60.104202293, 126.099396984, -19.662805612, -85.658000303],
    ];

    private static readonly double[][] Long =
    [
        [60, 3.320090035, 73.775590183, -27.427946682, -97.883446830],
        [40, 4.799255035, 59.962749003, -24.053336849, -79.216830817],
        [50, 3.967729326, 66.478881387, -26.122319024, -88.633471085],
        [70, 2.801433803, 81.615975875, -27.945890748, -106.760432821],
        [80, 2.374741968, 89.842241413, -27.707594521, -115.175093967],
    ];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_four_bar_whose_crank_turns_below_its_top_meets_the_tables(bool open) =>
        Compare(Small, 100, 40, 120, 80, open);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_four_bar_measured_beyond_the_top_stays_on_its_own_side(bool open) =>
        Compare(SmallBeyondTheTop, 100, 40, 120, 80, open);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_four_bar_of_the_size_of_a_steering_linkage_meets_the_tables(bool open) =>
        Compare(Long, 820, 180, 790, 210, open);

    // Measured at the first row's angle; the box runs over a half turn of the crank, short of both dead centres.
    private static void Compare(double[][] table, double ground, double crank, double coupler, double rocker, bool open)
    {
        (Vector3d pin, Vector3d joint) = ClosedForm(ground, crank, coupler, rocker, table[0][0] * Degree, open);
        (Linkage? linkage, LinkageFault? fault) = Linkage.Build(["chassis", "crank", "coupler", "rocker"], Joints(ground, pin, joint), 1);
        fault.ShouldBeNull();
        // A plane mechanism on four hinges says three things twice.
        linkage!.Redundant.ShouldBe(["coupler end"]);
        double reach = 0.8 * crank * Math.Sin(82 * Degree);
        var motion = new LinkageMotion(linkage, new PoseBox([new("pin height", false, -reach - pin.Z, reach - pin.Z)]), []);

        foreach (double[] row in table)
        {
            (Vector3d turnedPin, Vector3d turnedJoint) = ClosedForm(ground, crank, coupler, rocker, row[0] * Degree, open);

            SolvedPose pose = motion.At([turnedPin.Z - pin.Z]);

            pose.Answer.ShouldBe(PoseAnswerKind.Solved, $"crank at {row[0]}");
            (pose[1].Apply(pin) - turnedPin).Length.ShouldBeLessThan(1e-9);
            (pose[3].Apply(joint) - turnedJoint).Length.ShouldBeLessThan(1e-9);
            (pose[2].Apply(joint) - turnedJoint).Length.ShouldBeLessThan(1e-9);
            AngleOf(pose[2].ApplyToDirection(joint - pin)).ShouldBe(row[open ? 1 : 3], 1e-9);
            AngleOf(pose[3].ApplyToDirection(joint - (ground * Along))).ShouldBe(row[open ? 2 : 4], 1e-9);
        }
    }

    private static Joint[] Joints(double ground, Vector3d pin, Vector3d joint)
    {
        Vector3d axis = Vector3d.Cross(Along, Up);
        return
        [
            new Joint.Hinge("crank pivot", 0, 1, Vector3d.Zero, axis),
            new Joint.Hinge("crank pin", 1, 2, pin, axis),
            new Joint.Hinge("coupler end", 2, 3, joint, axis),
            new Joint.Hinge("rocker pivot", 3, 0, ground * Along, axis),
            new Joint.Travel("pin height", 1, pin, 0, 0),
        ];
    }

    // The joint is where the circles of coupler and rocker meet, on the left (open) or right of the way from pin to rocker pivot.
    private static (Vector3d Pin, Vector3d Joint) ClosedForm(double ground, double crank, double coupler, double rocker, double angle, bool open)
    {
        double x = crank * Math.Cos(angle), y = crank * Math.Sin(angle);
        double dx = ground - x, dy = -y, d = Math.Sqrt((dx * dx) + (dy * dy));
        double share = ((d * d) + (coupler * coupler) - (rocker * rocker)) / (2 * d);
        double aside = Math.Sqrt((coupler * coupler) - (share * share)) * (open ? 1 : -1);
        double jx = x + (((share * dx) - (aside * dy)) / d), jy = y + (((share * dy) + (aside * dx)) / d);
        return ((x * Along) + (y * Up), (jx * Along) + (jy * Up));
    }

    private static double AngleOf(Vector3d v) => Math.Atan2(Vector3d.Dot(v, Up), Vector3d.Dot(v, Along)) / Degree;
}
