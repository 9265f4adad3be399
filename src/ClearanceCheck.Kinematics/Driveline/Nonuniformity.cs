using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>How unevenly cardan joints turn what they drive.</summary>
/// <remarks>
/// One joint bent by b takes the angle f of the fork that drives to tan f2 = tan f1 cos b, f1 from the plane of the bend (kinematics
/// handbooks; from memory): to second order f2 = f1 - (b^2 / 4) sin 2 f1. The fork that is driven stands square to the one that drives, so
/// along a shaft whose yokes are in phase the next joint's term comes with the other sign, and planes that are turned against each other
/// come in at twice their angle. The sum of b^2 as vectors of the doubled angle is the square of the one angle that alone would be as uneven.
/// </remarks>
public static class Nonuniformity
{
    /// <summary>The angle of one joint that is as uneven as two on one shaft, rad: the root of |b1^2 - b2^2 e^(2 i d)|.</summary>
    /// <param name="firstRad">Angle of one joint.</param>
    /// <param name="secondRad">Angle of the other.</param>
    /// <param name="turnedRad">How far the plane in which the second bends is turned about the shaft against that of the first, less how far its yoke is.</param>
    public static double EquivalentRad(double firstRad, double secondRad, double turnedRad)
    {
        (double sin, double cos) = Trigonometry.SinCos(2 * turnedRad);
        double first = firstRad * firstRad, second = secondRad * secondRad;
        return Math.Sqrt(Length(first - (second * cos), second * sin));
    }

    /// <summary>The angle of one joint that is as uneven as a whole line of shafts, rad; null where the direction that a cardan joint needs is not known.</summary>
    /// <remarks>Joints of even turn add nothing; how yokes on both sides of one stand to each other is not known, so what is before and behind it is taken to add up.</remarks>
    /// <param name="axes">Directions of any length along what drives, each shaft and what is driven, all with the line; null where not known.</param>
    /// <param name="kinds">The joints between them, one less.</param>
    /// <param name="phasesRad">For each shaft how far its rear yoke is turned against its front one, right-handed about its direction: one less again.</param>
    public static double? EquivalentRad(ReadOnlySpan<Vector3d?> axes, ReadOnlySpan<ShaftJointKind> kinds, ReadOnlySpan<double> phasesRad)
    {
        double behind = 0;
        YokeSum sum = default;
        for (int i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] != ShaftJointKind.Single)
            {
                behind += sum.Square;
                sum = default;
                continue;
            }

            if (axes[i] is not { } before || axes[i + 1] is not { } after) return null;
            sum = sum.With(before.NormalizedOr(Vector3d.UnitX), after.NormalizedOr(Vector3d.UnitX), i < phasesRad.Length ? phasesRad[i] : 0);
        }

        return Math.Sqrt(behind + sum.Square);
    }

    /// <summary>Least and largest speed of what is driven against what drives: cos b and 1 / cos b, each twice a turn.</summary>
    /// <param name="angleRad">Below a quarter turn.</param>
    public static (double Least, double Most) SpeedRatio(double angleRad)
    {
        double cos = Trigonometry.SinCos(angleRad).Cos;
        return (cos, 1 / cos);
    }

    /// <summary>Largest less least speed against the mean: sin b tan b.</summary>
    public static double Fluctuation(double angleRad)
    {
        (double sin, double cos) = Trigonometry.SinCos(angleRad);
        return sin * sin / cos;
    }

    /// <summary>The largest angular acceleration of what is driven at an even turn of what drives, rad/s^2.</summary>
    /// <remarks>
    /// The largest value over f of w^2 cos b sin^2 b sin 2f / (1 - sin^2 b cos^2 f)^2. With p = 1 - sin^2 b / 2 and q = sin^2 b / 2 it is
    /// where q c^2 + p c - 2 q = 0 for c = cos 2f.
    /// </remarks>
    /// <param name="angleRad">Of one joint, or the equivalent angle of several; below a quarter turn.</param>
    /// <param name="shaftRpm">Turns a minute.</param>
    public static double PeakAcceleration(double angleRad, double shaftRpm)
    {
        (double sin, double cos) = Trigonometry.SinCos(angleRad);
        double speed = 2 * Math.PI * shaftRpm / 60, q = sin * sin / 2, p = 1 - q;
        double c = 4 * q / (p + Math.Sqrt((p * p) + (8 * q * q))), d = p - (q * c);
        return speed * speed * cos * sin * sin * Math.Sqrt((1 - c) * (1 + c)) / (d * d);
    }

    private static double Length(double x, double y) => Math.Sqrt((x * x) + (y * y));

    /// <summary>Squares of joint angles as vectors of the doubled angle of yokes, along shafts without an even joint.</summary>
    /// <param name="Mark">A direction square to the present shaft that runs along the line without turning about it; none before the first joint.</param>
    /// <param name="YokeRad">How far yokes were turned so far.</param>
    /// <param name="Joints">How many.</param>
    private readonly record struct YokeSum(double Real, double Imaginary, Vector3d? Mark, double YokeRad, int Joints)
    {
        public double Square => Length(Real, Imaginary);

        public YokeSum With(Vector3d before, Vector3d after, double phaseRad)
        {
            Vector3d mark = Mark ?? before.AnyPerpendicular(), normal = Vector3d.Cross(before, after);
            double angle = JointGeometry.Between(before, after), square = (Joints % 2 == 0 ? 1 : -1) * angle * angle;
            // Twice the angle of the plane's normal from the mark, by its cosine and sine.
            double x = Vector3d.Dot(normal, mark), y = Vector3d.Dot(normal, Vector3d.Cross(before, mark)), n = (x * x) + (y * y);
            (double cosPlane, double sinPlane) = n > 0 ? (((x * x) - (y * y)) / n, 2 * x * y / n) : (1, 0);
            (double sinYoke, double cosYoke) = Trigonometry.SinCos(2 * YokeRad);
            return new YokeSum(
                Real + (square * ((cosYoke * cosPlane) + (sinYoke * sinPlane))),
                Imaginary + (square * ((sinYoke * cosPlane) - (cosYoke * sinPlane))),
                Carried(mark, before, after),
                YokeRad + phaseRad,
                Joints + 1);
        }

        // The shortest turn that takes one unit vector to another, of a vector that is square to the first.
        private static Vector3d Carried(Vector3d mark, Vector3d from, Vector3d to) =>
            mark - ((from + to) * (Vector3d.Dot(mark, to) / (1 + Vector3d.Dot(from, to))));
    }
}
