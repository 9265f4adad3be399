using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Oracle;

/// <summary>Signed gap of a plain disc (solid cylinder) and a capsule.</summary>
/// <remarks>
/// Along the segment the squared distance to the disc is ez^2 + er^2, with ez the excess of |z| over the half width and er that of
/// the distance from the axis over the radius. It is convex with a continuous derivative, so a Newton search on the derivative,
/// safeguarded by bisection, finds the minimum; 1e-9 mm. When the segment itself enters the disc, the separation is taken along the
/// best of the axis, its opposite and the radial direction at the deepest point: a lower bound of the true signed gap, and exact
/// where one of these is the way out.
/// </remarks>
internal static class DiscCapsule
{
    private const int MaximumSteps = 60;
    private const double ParameterTolerance = 1e-13;

    public static PieceGap Measure(Disc disc, in Capsule capsule)
    {
        var line = new LineFromDisc(disc, capsule);
        double t = line.Nearest();
        (double ez, double er, double z, Vector3d radial) = line.ExcessAt(t);
        double distance = Math.Sqrt((ez * ez) + (er * er));
        if (!(distance > 1e-12)) return Overlapping(disc, capsule, line);
        Vector3d onAxis = Vector3d.Lerp(capsule.From, capsule.To, t);
        Vector3d outward = ((radial * er) + (disc.Axis * (z < 0 ? -ez : ez))) / distance;
        return new PieceGap(distance - capsule.Radius, -outward, onAxis - (outward * distance), onAxis - (outward * capsule.Radius));
    }

    private static PieceGap Overlapping(Disc disc, in Capsule capsule, in LineFromDisc line)
    {
        double t = line.NearestToAxis();
        (_, _, _, Vector3d radial) = line.ExcessAt(t);
        Vector3d best = disc.Axis;
        double bestSeparation = double.NegativeInfinity;
        foreach (Vector3d n in (ReadOnlySpan<Vector3d>)[disc.Axis, -disc.Axis, radial, -radial])
        {
            double separation = -disc.Support(-n) - capsule.Support(n);
            if (separation <= bestSeparation) continue;
            bestSeparation = separation;
            best = n;
        }

        Vector3d low = Vector3d.Dot(best, capsule.From) > Vector3d.Dot(best, capsule.To) ? capsule.From : capsule.To;
        Vector3d onSecond = low + (best * capsule.Radius);
        return new PieceGap(bestSeparation, best, onSecond + (best * bestSeparation), onSecond);
    }

    // The capsule's axis seen from the disc: height z0 + dz t along the disc's axis, and radial offset o + d t square to it.
    private readonly struct LineFromDisc
    {
        private readonly Vector3d o;
        private readonly Vector3d d;
        private readonly double z0;
        private readonly double dz;
        private readonly double dd;
        private readonly double od;
        private readonly double oo;
        private readonly double radius;
        private readonly double halfWidth;
        private readonly Vector3d sideways;

        public LineFromDisc(Disc disc, in Capsule capsule)
        {
            Vector3d from = capsule.From - disc.Center, along = capsule.To - capsule.From;
            z0 = Vector3d.Dot(from, disc.Axis);
            dz = Vector3d.Dot(along, disc.Axis);
            o = from - (disc.Axis * z0);
            d = along - (disc.Axis * dz);
            (dd, od, oo) = (d.LengthSquared, Vector3d.Dot(o, d), o.LengthSquared);
            (radius, halfWidth) = (disc.RadiusMm, disc.HalfWidthMm);
            sideways = disc.Axis.AnyPerpendicular();
        }

        public double NearestToAxis() => dd > 0 ? Math.Clamp(-od / dd, 0, 1) : 0.5;

        public (double Ez, double Er, double Z, Vector3d Radial) ExcessAt(double t)
        {
            Vector3d across = o + (d * t);
            double rho = across.Length, z = z0 + (dz * t);
            return (Math.Max(Math.Abs(z) - halfWidth, 0), Math.Max(rho - radius, 0), z, rho > 0 ? across / rho : sideways);
        }

        public double Nearest()
        {
            if (!(Slope(0).First < 0)) return 0;
            if (!(Slope(1).First > 0)) return 1;
            double low = 0, high = 1, t = NearestToAxis();
            if (!(t > 0 && t < 1)) t = 0.5;
            for (int step = 0; step < MaximumSteps; step++)
            {
                (double first, double second) = Slope(t);
                if (first > 0) high = t;
                else if (first < 0) low = t;
                else return t;
                double next = second > 0 ? t - (first / second) : low;
                if (!(next > low && next < high)) next = 0.5 * (low + high);
                double move = Math.Abs(next - t);
                t = next;
                if (move < ParameterTolerance) break;
            }

            return t;
        }

        // Half the first and second derivative of the squared distance along the segment.
        private (double First, double Second) Slope(double t)
        {
            double z = z0 + (dz * t), rho = Math.Sqrt(Math.Max(0, oo + (t * ((2 * od) + (dd * t)))));
            double ez = Math.Max(Math.Abs(z) - halfWidth, 0), er = Math.Max(rho - radius, 0);
            double rhoSlope = rho > 0 ? ((dd * t) + od) / rho : 0;
            double first = (ez * (z < 0 ? -dz : dz)) + (er * rhoSlope);
            double second = (ez > 0 ? dz * dz : 0)
                + (er > 0 ? (rhoSlope * rhoSlope) + (er * (dd - (rhoSlope * rhoSlope)) / rho) : 0);
            return (first, second);
        }
    }
}
