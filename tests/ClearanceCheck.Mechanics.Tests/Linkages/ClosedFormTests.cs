using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Tests.Linkages;

/// <summary>Linkages with a closed form: split pivoted beam, track-bar arc, crank and rod in space. Figures: motion tables of an independent program.</summary>
public sealed class ClosedFormTests
{
    private const double Degree = Math.PI / 180;

    // Travel (mm), rotation (degrees), hub x and y, lower kingpin point x, y, z (mm); split-beam.csv, nine decimals.
    private static readonly double[][] SplitBeam =
    [
        [-120, 8.181280519, -3.377826023, 807.848815314, -1.765646960, 694.269570842, -202.432736845],
        [-60, 4.091284565, -0.513105415, 808.217514242, 4.162607053, 699.743692450, -148.935750397],
        [-20, 1.365193473, 0.090763059, 806.471746998, 6.953638248, 701.606126976, -113.027429727],
        [0, 0, 0, 805, 8, 702, -95],
        [40, -2.738612137, -0.972941016, 800.849598285, 9.389063058, 701.704819729, -58.797478494],
        [80, -5.493600525, -3.014604627, 795.069394610, 9.827906677, 699.947261343, -22.395554914],
        [120, -8.271775547, -6.148228612, 787.623951367, 9.295869756, 696.695527615, 14.210106439],
    ];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_beam_on_two_balls_turns_about_their_line(bool hinge)
    {
        Vector3d beam = new(25, -215, -85), arm = new(-890, 385, -45), hub = new(0, 805, 0), kingpin = new(8, 702, -95);
        Joint[] pivots = hinge ? [new Joint.Hinge("pivots", 0, 1, beam, arm - beam)] : [new Joint.Ball("beam", 0, 1, beam), new Joint.Ball("arm", 1, 0, arm)];
        var motion = Draws.Motion(["chassis", "beam"], [.. pivots, new Joint.Travel("hub", 1, hub, 0, 0)], 1, 130);
        motion.Linkage.Redundant.ShouldBe(hinge ? [] : ["arm"]);

        foreach (double[] row in SplitBeam)
        {
            SolvedPose pose = motion.At(row.AsSpan(0, 1));

            Vector3d turn = pose[1].Rotation.ToRotationVector();
            (Vector3d.Dot(turn, (arm - beam).NormalizedOr(default)) / Degree).ShouldBe(row[1], 1e-9);
            Near(pose[1].Apply(hub), new(row[2], row[3], row[0]), 1e-9);
            Near(pose[1].Apply(kingpin), new(row[4], row[5], row[6]), 1e-9);
        }

        for (double travel = -120; travel <= 120; travel += 7.5)
        {
            double angle = AngleForHeight(hub, beam, arm - beam, travel);

            Near(motion.At([travel])[1].Apply(kingpin), Turned(kingpin, beam, arm - beam, angle), 1e-9);
        }
    }

    [Theory] // Run, how far the axle end lies below the frame end, bump, shift away from the frame end: track-bar-arc.csv.
    [InlineData(820, 0, -150, -13.836244923)]
    [InlineData(820, 0, -75, -3.437081420)]
    [InlineData(820, 0, 25, -0.381186160)]
    [InlineData(820, 0, 150, -13.836244923)]
    [InlineData(800, 120, -150, -37.438527068)]
    [InlineData(800, 120, -50, -9.114420412)]
    [InlineData(800, 120, 75, 7.697344307)]
    [InlineData(800, 120, 150, 8.393468554)]
    [InlineData(760, -60, -150, -2.966315148)]
    [InlineData(760, -60, -100, 1.314652427)]
    public void The_axle_end_of_a_track_bar_runs_on_an_arc(double run, double below, double bump, double shift)
    {
        Vector3d frame = new(100, 400, 300), axle = new(100, 400 - run, 300 - below);
        var motion = Draws.Motion(
            ["chassis", "bar"], [new Joint.Hinge("frame end", 0, 1, frame, Vector3d.UnitX), new Joint.Travel("axle end", 1, axle, 0, 0)], 1, 160);

        Vector3d end = motion.At([bump])[1].Apply(axle);

        double length = Math.Sqrt((run * run) + (below * below)), drop = below - bump;
        (axle.Y - end.Y).ShouldBe(shift, 1e-9);
        Near(end, new(100, 400 - Math.Sqrt((length * length) - (drop * drop)), axle.Z + bump), 1e-9);
    }

    [Theory] // Input and output angle (degrees), q (mm): rssr.csv.
    [InlineData(-40, 5.5082548369, 192.95206469, -387.37367736, 13.13964512)]
    [InlineData(-25, 1.4537450570, 194.57610162, -396.64227008, 10.79871550)]
    [InlineData(-5, -0.2709152154, 195.06970869, -400.62743165, 9.85360106)]
    [InlineData(0, 0, 195, -400, 10)]
    [InlineData(15, 2.5289850778, 194.20863451, -394.16953980, 11.40350169)]
    [InlineData(30, 7.6205615113, 191.85035524, -382.61254611, 14.42238421)]
    [InlineData(40, 12.4197673970, 188.70609325, -372.00883958, 17.48640411)]
    public void Two_cranks_joined_by_a_rod_in_space_meet_the_table_and_the_closed_form(double input, double output, double x, double y, double z)
    {
        Vector3d one = Vector3d.Zero, oneAxis = new(0.1, 1, 0.2), other = new(60, -420, 30), otherAxis = new(0.3, -0.2, 1);
        Vector3d pin = new(150, 20, 40), end = new(195, -400, 10);
        var motion = Draws.Motion(
            ["chassis", "crank", "follower"],
            [
                new Joint.Hinge("crank pivot", 0, 1, one, oneAxis), new Joint.Hinge("follower pivot", 2, 0, other, otherAxis),
                new Joint.Rod("rod", 1, pin, 2, end), new Joint.Travel("pin height", 1, pin, 0, 0),
            ],
            1,
            110);
        Vector3d turnedPin = Turned(pin, one, oneAxis, input * Degree);

        SolvedPose pose = motion.At([turnedPin.Z - pin.Z]);

        Near(pose[1].Apply(pin), turnedPin, 1e-9);
        Near(pose[2].Apply(end), new(x, y, z), 1e-8);
        Vector3d.Dot(pose[2].Rotation.ToRotationVector() / Degree, otherAxis.NormalizedOr(default)).ShouldBe(output, 1e-9);
        Near(pose[2].Apply(end), Turned(end, other, otherAxis, Follower(end, other, otherAxis, turnedPin, (end - pin).Length)), 1e-9);
    }

    // A cos a + B sin a = C for the height of a point turned about a line; the root nearest to zero.
    private static double AngleForHeight(Vector3d point, Vector3d on, Vector3d axis, double height)
    {
        (Vector3d fixedPart, Vector3d cosine, Vector3d sine) = Parts(point, on, axis);
        return NearestRoot(cosine.Z, sine.Z, height - on.Z - fixedPart.Z);
    }

    // |on + f + c cos a + s sin a - pin|^2 = length^2, where c and s are equally long and square to each other.
    private static double Follower(Vector3d point, Vector3d on, Vector3d axis, Vector3d pin, double length)
    {
        (Vector3d fixedPart, Vector3d cosine, Vector3d sine) = Parts(point, on, axis);
        Vector3d from = on + fixedPart - pin;
        return NearestRoot(2 * Vector3d.Dot(from, cosine), 2 * Vector3d.Dot(from, sine), (length * length) - from.LengthSquared - cosine.LengthSquared);
    }

    private static double NearestRoot(double a, double b, double c)
    {
        double middle = Math.Atan2(b, a), half = Math.Acos(c / Math.Sqrt((a * a) + (b * b)));
        double one = Math.IEEERemainder(middle + half, 2 * Math.PI), other = Math.IEEERemainder(middle - half, 2 * Math.PI);
        return Math.Abs(one) < Math.Abs(other) ? one : other;
    }

    private static Vector3d Turned(Vector3d point, Vector3d on, Vector3d axis, double angle)
    {
        (Vector3d fixedPart, Vector3d cosine, Vector3d sine) = Parts(point, on, axis);
        return on + fixedPart + (cosine * Math.Cos(angle)) + (sine * Math.Sin(angle));
    }

    private static (Vector3d Fixed, Vector3d Cosine, Vector3d Sine) Parts(Vector3d point, Vector3d on, Vector3d axis)
    {
        Vector3d k = axis / axis.Length, from = point - on, fixedPart = k * Vector3d.Dot(k, from);
        return (fixedPart, from - fixedPart, Vector3d.Cross(k, from));
    }

    private static void Near(Vector3d actual, Vector3d expected, double tolerance) => (actual - expected).Length.ShouldBeLessThan(tolerance);
}
