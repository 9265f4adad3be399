using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>Both halves of a leaf spring as beams, integrated along their length: stiff at the clamp, tapering to nothing at the eye, bent under forces at their ends.</summary>
/// <remarks>
/// Large deflections, in the plane of the spring: turn' = rest + M(s) / EI(s), EI(s) = EI0 (1 - s / a), M the moment of the end's force about s.
/// One end is on the frame, the other on a shackle, a two-force member. Unknown for a given height: the seat's x and pitch, the force at the
/// fixed eye, the shackle's pull and its angle; the seat balances in x and in pitch. Newton with differences. Nothing of the engine is used but points.
/// </remarks>
internal sealed class BeamPair
{
    private const int Steps = 400;
    private readonly Vector3d clampFixed, clampOther, alongFixed, eye, end, pivot, hub;
    private readonly double lengthFixed, lengthOther, restFixed, restOther, stiffFixed, stiffOther, shackle, shackleAngle, wrapTorque;
    private double[] state = new double[6];
    private double travel;

    private BeamPair(Joint.Leaf first, Joint.Leaf second, Vector3d pivot, Vector3d hub)
    {
        (clampFixed, clampOther, alongFixed, eye, end, this.pivot, this.hub) = (first.Clamp, second.Clamp, first.Along, first.Eye, second.Eye, pivot, hub);
        (lengthFixed, restFixed) = Arc(first.Eye - first.Clamp, first.Along);
        (lengthOther, restOther) = Arc(second.Eye - second.Clamp, second.Along);
        // The rate of a tapered half is 2 EI0 / a^3, that of the engine's arc 4 EI / a^3.
        (stiffFixed, stiffOther) = (2 * first.BendingStiffness, 2 * second.BendingStiffness);
        Vector3d hung = end - pivot;
        (shackle, shackleAngle) = (Math.Sqrt((hung.X * hung.X) + (hung.Z * hung.Z)), Math.Atan2(hung.Z, hung.X));
        wrapTorque = (4 * first.BendingStiffness / (first.Eye - first.Clamp).Length) + (4 * second.BendingStiffness / (second.Eye - second.Clamp).Length);
    }

    public static BeamPair Of(AxleModule module, double[] parameters)
    {
        Joint.Leaf[] leaves = [.. module.Motion.Linkage.Joints.OfType<Joint.Leaf>().Take(2)];
        return new BeamPair(leaves[0], leaves[1], module.Axle.Points["shackle-left-frame"].At(parameters), module.Axle.Left.Hub.At(parameters));
    }

    /// <summary>How far the hub goes along x, and the axle's pitch, at a travel under so much wind-up torque as the engine's coordinate stands for.</summary>
    public (double X, double Pitch) Settle(double hubTravel, double wrap)
    {
        for (int step = 1; step <= 10; step++)
        {
            travel = hubTravel * step / 10;
            double torque = wrapTorque * wrap * step / 10;
            for (int i = 0; i < 30; i++)
            {
                double[] r = Residual(state, torque);
                if (r.Max(Math.Abs) < 1e-9) break;
                double[] change = Solve(Slopes(torque), r);
                for (int k = 0; k < 6; k++) state[k] -= change[k];
            }

            Residual(state, torque).Max(Math.Abs).ShouldBeLessThan(1e-6);
        }

        return (Seat(hub).X - hub.X, state[1]);
    }

    /// <summary>Points of the fixed half, by their share of its length, in the spring's plane.</summary>
    public IEnumerable<(double Share, Vector3d At)> FixedHalf()
    {
        List<(double X, double Z, double Turn)> path = Integrate(Seat(clampFixed), Heading(alongFixed), lengthFixed, restFixed, stiffFixed, state[2] * Scale, state[3] * Scale, out _);
        for (int i = 0; i <= 10; i++) yield return (i / 10.0, new Vector3d(path[i * Steps / 10].X, clampFixed.Y, path[i * Steps / 10].Z));
    }

    private const double Scale = 1000;

    private double[] Residual(double[] s, double torque)
    {
        double[] kept = state;
        state = s;
        // The unknown force on each end is told as (along x, along z), N times 1/Scale.
        List<(double X, double Z, double Turn)> one = Integrate(Seat(clampFixed), Heading(alongFixed), lengthFixed, restFixed, stiffFixed, s[2] * Scale, s[3] * Scale, out double momentOne);
        double angle = shackleAngle + s[5];
        Vector3d hung = pivot + new Vector3d(shackle * Math.Cos(angle), 0, shackle * Math.Sin(angle));
        (double fx, double fz) = (s[4] * Scale * Math.Cos(angle), s[4] * Scale * Math.Sin(angle));
        List<(double X, double Z, double Turn)> other = Integrate(Seat(clampOther), Heading(-alongFixed), lengthOther, restOther, stiffOther, fx, fz, out double momentOther);
        // What the ends do to the seat: forces there and moments about its middle.
        Vector3d middle = Seat(Vector3d.Lerp(clampFixed, clampOther, 0.5)), a = Seat(clampFixed) - middle, b = Seat(clampOther) - middle;
        double balance = momentOne + momentOther + Moment(a, s[2] * Scale, s[3] * Scale) + Moment(b, fx, fz) + torque;
        state = kept;
        return
        [
            one[^1].X - eye.X, one[^1].Z - eye.Z, other[^1].X - hung.X, other[^1].Z - hung.Z, ((s[2] * Scale) + fx) / Scale, balance / (Scale * 500),
        ];
    }

    // About +y, which takes z to x.
    private static double Moment(Vector3d arm, double fx, double fz) => (arm.Z * fx) - (arm.X * fz);

    // A beam from the seat to its end under a force at the end; the moment that it hands to the seat at the clamp, about +y.
    private static List<(double X, double Z, double Turn)> Integrate(
        Vector3d from, double heading, double length, double rest, double stiff, double fx, double fz, out double moment)
    {
        // The end is not known before the beam is: the moment at s is that at the clamp less what the force does on the way.
        double clamp = 0, step = length / Steps;
        List<(double X, double Z, double Turn)> path = [];
        for (int round = 0; round < 60; round++)
        {
            path = Path(clamp);
            double armX = path[^1].X - from.X, armZ = path[^1].Z - from.Z, next = (armZ * fx) - (armX * fz);
            if (Math.Abs(next - clamp) < 1e-9 * (1 + Math.Abs(next))) break;
            clamp = next;
        }

        moment = clamp;
        return path;

        List<(double X, double Z, double Turn)> Path(double atClamp)
        {
            var points = new List<(double X, double Z, double Turn)> { (from.X, from.Z, heading) };
            (double x, double z, double turn) = (from.X, from.Z, heading);
            for (int i = 0; i < Steps; i++)
            {
                double s = (i + 0.5) * step;
                (double mx, double mz) = (x + (0.5 * step * Math.Cos(turn)), z + (0.5 * step * Math.Sin(turn)));
                // A moment about +y turns x towards -z: it lowers the heading.
                double here = atClamp - (((mz - from.Z) * fx) - ((mx - from.X) * fz));
                double bend = rest - (here / (stiff * (1 - (s / length))));
                double half = turn + (0.5 * step * bend);
                (x, z, turn) = (x + (step * Math.Cos(half)), z + (step * Math.Sin(half)), turn + (step * bend));
                points.Add((x, z, turn));
            }

            return points;
        }
    }

    // The angle of a direction in the plane, from x towards z, with the seat's pitch: a turn about +y lowers it.
    private double Heading(Vector3d along) => Math.Atan2(along.Z, along.X) - state[1];

    // Where the seat takes a point: the hub's height is given, its x and the pitch are unknown.
    private Vector3d Seat(Vector3d point)
    {
        (double sin, double cos) = Math.SinCos(state[1]);
        Vector3d arm = point - hub;
        return new Vector3d(hub.X + state[0] + (arm.X * cos) + (arm.Z * sin), point.Y, hub.Z + travel - (arm.X * sin) + (arm.Z * cos));
    }

    // Length and curvature, towards z, of the arc that leaves its clamp along a direction; the sign is that of the heading's change.
    private static (double Length, double Bent) Arc(Vector3d tip, Vector3d along)
    {
        double chord = Math.Sqrt((tip.X * tip.X) + (tip.Z * tip.Z));
        double half = Math.Atan2(tip.Z, tip.X) - Math.Atan2(along.Z, along.X);
        half = Math.IEEERemainder(half, 2 * Math.PI);
        double length = chord * half / Math.Sin(half);
        return (length, 2 * half / length);
    }

    private double[][] Slopes(double torque)
    {
        var slopes = new double[6][];
        for (int k = 0; k < 6; k++)
        {
            double h = k is 1 or 5 ? 1e-6 : 1e-4;
            double[] up = [.. state], down = [.. state];
            up[k] += h;
            down[k] -= h;
            double[] a = Residual(up, torque), b = Residual(down, torque);
            slopes[k] = [.. a.Select((v, i) => (v - b[i]) / (2 * h))];
        }

        return slopes;
    }

    // Gauss with row exchange; slopes are columns.
    private static double[] Solve(double[][] columns, double[] right)
    {
        int n = right.Length;
        var m = new double[n, n + 1];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++) m[i, j] = columns[j][i];
            m[i, n] = right[i];
        }

        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
                if (Math.Abs(m[i, k]) > Math.Abs(m[pivot, k])) pivot = i;
            for (int j = 0; j <= n; j++) (m[k, j], m[pivot, j]) = (m[pivot, j], m[k, j]);
            for (int i = 0; i < n; i++)
            {
                if (i == k) continue;
                double factor = m[i, k] / m[k, k];
                for (int j = k; j <= n; j++) m[i, j] -= factor * m[k, j];
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => m[i, n] / m[i, i])];
    }
}
