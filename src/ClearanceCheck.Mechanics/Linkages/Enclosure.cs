using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>A proof, over a block of the pose box, that one continuous solution exists, with bounds on it and on its derivatives.</summary>
/// <remarks>
/// Parametric Krawczyk operator (R. Krawczyk, "Newton-Algorithmen zur Bestimmung von Nullstellen mit Fehlerschranken", Computing 4,
/// 1969; from memory). About the solution at the block's centre write the unknowns as A d + v, where d is the displacement in the
/// pose box and A the solution's first derivative there, and with C near the inverse of F_v let
///     K(V) = -C F(A d, s0 + d) + (I - C F_v(A d + V, s0 + d)) V,   d over the whole block.
/// If K(V) lies inside V, then for every d there is exactly one v in V with F = 0, and it lies in K(V). F(A d, ...) is bounded by its
/// second-order Taylor form along d: value and slope at the centre are rounding, the rest is half the second derivative over the
/// block, so V shrinks with the square of the block. Every operation rounds outward.
/// Where other bodies, proved before, drive these, their places X(q) are known with their first derivatives over the block, and no mixed
/// second ones: then F(A d, X(s0 + d), s0 + d) is bounded by its value at the centre and its slope over the block (mean value form).
/// The derivatives then solve linear systems with the enclosed matrix; see <see cref="LinkageDerivatives"/> for their right sides.
/// </remarks>
internal sealed class Enclosure
{
    private const int MaximumTries = 12;
    private const int MaximumWidenings = 6;
    private const double FirstRoom = 0.05;
    private const double WideRoom = 0.2;
    private const int MostInOrthants = 3;
    // Stored poses are as near as this to the solution.
    private const double RoundingMm = 1e-8;
    private const double DrivenRoundingMm = 1e-7;
    private readonly Linkage linkage;
    private readonly RigidMotion[] bodies;
    private readonly double[] loads;
    private readonly int n;
    private readonly double[] slope;
    private readonly Interval[] box;
    private readonly Interval[] pose;
    private readonly Interval[] remainder;
    private readonly DrivenJets<Interval>? driven;

    private Enclosure(Linkage linkage, RigidMotion[] bodies, double[] loads, double[] slope, Interval[] box, Interval[] pose, DrivenJets<Interval>? driven)
    {
        this.driven = driven;
        (this.linkage, this.bodies, this.loads, this.slope, this.box, this.pose, Jets) = (linkage, bodies, loads, slope, box, pose, []);
        n = linkage.Unknowns;
        remainder = new Interval[n];
    }

    /// <summary>For each coordinate, for each body, its place and derivatives over the whole block.</summary>
    public MotionJet<Interval>[][] Jets { get; private set; }

    /// <summary>Tries the proof; null when it fails, which says nothing about the linkage.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="centre">Its solution at the block's centre.</param>
    /// <param name="centreSettings">The centre.</param>
    /// <param name="halfWidths">Half the block's width in each coordinate.</param>
    /// <param name="loosest">The largest norm of I - C F_v to be content with, below one: what the derivatives' bounds may lose goes with it.</param>
    /// <param name="drive">What drives the linkage's driven bodies: at the centre, and over the block.</param>
    public static Enclosure? TryProve(
        Linkage linkage, RigidMotion[] centre, double[] centreSettings, double[] halfWidths, double loosest = 0.95, (DrivenJets<Real> Centre, DrivenJets<Interval> Over)? drive = null)
    {
        int n = linkage.Unknowns, d = centreSettings.Length;
        double[] loads = linkage.LoadsAt(centre, centreSettings);
        double[] inverse = Inverse(linkage, centre, loads, centreSettings);
        var slope = new double[n * d];
        for (int k = 0; k < d; k++) SlopeColumn(linkage, centre, loads, centreSettings, inverse, k, slope, drive?.Centre);
        var pose = new Interval[d];
        for (int k = 0; k < d; k++) pose[k] = Interval.From(centreSettings[k]) + Interval.Symmetric(halfWidths[k]);
        var enclosure = new Enclosure(linkage, centre, loads, slope, new Interval[n], pose, drive?.Over);
        return enclosure.ProveSolution(inverse, centreSettings, halfWidths, loosest) && enclosure.ProveDerivatives(inverse) ? enclosure : null;
    }

    /// <summary>True when a solved pose lies inside the enclosure: it is then on the branch that was proved.</summary>
    public bool Contains(ReadOnlySpan<RigidMotion> solved)
    {
        Span<double> unknowns = stackalloc double[linkage.BodyUnknowns];
        Displacement.Between(linkage, bodies, solved, unknowns);
        for (int i = 0; i < unknowns.Length; i++)
            if (!(box[i] + Interval.Symmetric(RoundingMm)).Contains(unknowns[i])) return false;
        return true;
    }

    /// <summary>The same over a part of the block, tighter: the solution is proved, so only its bounds and derivatives are made anew.</summary>
    /// <param name="centreSettings">The block's centre, as it was proved about.</param>
    /// <param name="part">The part's settings.</param>
    /// <param name="partDriven">What drives the linkage's driven bodies over the part.</param>
    public Enclosure? Over(double[] centreSettings, Interval[] part, DrivenJets<Interval>? partDriven = null)
    {
        int d = part.Length;
        var narrow = new Interval[n];
        for (int i = 0; i < n; i++)
        {
            narrow[i] = remainder[i];
            for (int k = 0; k < d; k++) narrow[i] += Interval.From(slope[(i * d) + k]) * (part[k] - Interval.From(centreSettings[k]));
            narrow[i] = narrow[i].Intersect(box[i]);
        }

        var over = new Enclosure(linkage, bodies, loads, slope, narrow, part, partDriven);
        return over.ProveDerivatives(InverseAtMiddle(narrow, part)) ? over : null;
    }

    // The Jacobian is bounded once over a box with room to spare; the remainder is then looked for inside it.
    private bool ProveSolution(double[] inverse, double[] centreSettings, double[] halfWidths, double loosest)
    {
        Interval[] predictor = Times(slope, [.. halfWidths.Select(Interval.Symmetric)]);
        Interval[] offset = Precondition(inverse, driven is null ? Bound(centreSettings, halfWidths) : DrivenBound(centreSettings, halfWidths));
        for (int i = 0; i < n; i++) offset[i] = -offset[i];
        Interval[] v = Inflate(offset, FirstRoom), room = Inflate(offset, WideRoom);
        for (int widening = 0; widening < MaximumWidenings; widening++)
        {
            for (int i = 0; i < n; i++) box[i] = predictor[i] + room[i];
            if (!box.All(b => b.IsFinite) || DefectOver(inverse, room, centreSettings, halfWidths, loosest) is not { } defect) return false;
            for (int attempt = 0; attempt < MaximumTries; attempt++)
            {
                Interval[] next = Contracted(offset, defect, v);
                if (IsInside(next, v))
                {
                    next.CopyTo(remainder, 0);
                    for (int i = 0; i < n; i++) box[i] = predictor[i] + next[i];
                    return true;
                }

                for (int i = 0; i < n; i++) next[i] = Interval.Hull(next[i], v[i]);
                v = Inflate(next, FirstRoom);
                if (!IsInside(v, room)) break;
            }

            room = Inflate(v, WideRoom);
        }

        return false;
    }

    private Interval[] Contracted(Interval[] offset, Interval[] defect, Interval[] v)
    {
        Interval[] next = [.. offset];
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) next[i] += defect[(i * n) + j] * v[j];
        return next;
    }

    private static bool IsInside(Interval[] inner, Interval[] outer)
    {
        for (int i = 0; i < inner.Length; i++)
            if (!inner[i].IsInside(outer[i])) return false;
        return true;
    }

    // I - C F_u over predictor and remainder; null when its norm is too large, which one orthant may show already.
    private Interval[]? DefectOver(double[] inverse, Interval[] v, double[] centreSettings, double[] halfWidths, double loosest)
    {
        Interval[]? hull = null;
        foreach (Interval[] way in driven is null ? Orthants(halfWidths) : [[.. halfWidths.Select(Interval.Symmetric)]])
        {
            Interval[] over = Times(slope, way);
            for (int i = 0; i < n; i++) over[i] += v[i];
            Interval[] own = Jacobian(over, [.. way.Select((w, k) => Interval.From(centreSettings[k]) + w)]);
            if (hull is null && !IsTight(Defect(inverse, own), loosest)) return null;
            for (int i = 0; hull is not null && i < own.Length; i++) own[i] = Interval.Hull(own[i], hull[i]);
            hull = own;
        }

        Interval[] defect = Defect(inverse, hull!);
        return IsTight(defect, loosest) ? defect : null;
    }

    private bool IsTight(Interval[] defect, double loosest) => Norm(defect, Weights(defect)) < loosest;

    // F(A d, s0 + d) over the block by its second-order Taylor form along d, orthant by orthant: each way from the centre stays in one.
    private Interval[] Bound(double[] centreSettings, double[] halfWidths)
    {
        int d = centreSettings.Length;
        var u = new Taylor2<Interval>[n];
        var s = new Taylor2<Interval>[d];
        var residual = new Taylor2<Interval>[n];
        for (int i = 0; i < n; i++) u[i] = default;
        for (int k = 0; k < d; k++) s[k] = Taylor2<Interval>.From(centreSettings[k]);
        linkage.Evaluate(linkage.Place<Taylor2<Interval>>(bodies, loads, u), s, residual);
        Interval[] bound = [.. residual.Select(r => r.Value)], slopeLeft = SlopeAtCentre(centreSettings, halfWidths);
        var bend = new Interval[n];
        bool started = false;
        foreach (Interval[] way in Orthants(halfWidths))
        {
            Interval[] predictor = Times(slope, way);
            for (int i = 0; i < n; i++) u[i] = new(predictor[i], predictor[i], Interval.Zero);
            for (int k = 0; k < d; k++) s[k] = new(Interval.From(centreSettings[k]) + way[k], way[k], Interval.Zero);
            linkage.Evaluate(linkage.Place<Taylor2<Interval>>(bodies, loads, u), s, residual);
            for (int i = 0; i < n; i++) bend[i] = started ? Interval.Hull(bend[i], residual[i].Second) : residual[i].Second;
            started = true;
        }

        for (int i = 0; i < n; i++) bound[i] += slopeLeft[i] + (bend[i] * Interval.From(0.5));
        return bound;
    }

    private Interval[] DrivenBound(double[] centreSettings, double[] halfWidths)
    {
        int d = centreSettings.Length;
        var bound = new Interval[n];
        linkage.Evaluate(linkage.Place<Interval>(bodies, loads, new Interval[n]), [.. centreSettings.Select(Interval.From)], bound);
        for (int i = 0; i < n; i++) bound[i] += Interval.Symmetric(DrivenRoundingMm);
        Interval[] predictor = Times(slope, [.. halfWidths.Select(Interval.Symmetric)]);
        var u = new Taylor2<Interval>[n];
        var s = new Taylor2<Interval>[d];
        var residual = new Taylor2<Interval>[n];
        for (int k = 0; k < d; k++)
        {
            for (int i = 0; i < n; i++) u[i] = new(predictor[i], Interval.From(slope[(i * d) + k]), Interval.Zero);
            for (int i = 0; i < d; i++) s[i] = new(pose[i], Interval.From(i == k ? 1 : 0), Interval.Zero);
            linkage.Evaluate(linkage.Place<Taylor2<Interval>>(bodies, loads, u, driven!.Along(k)), s, residual);
            for (int i = 0; i < n; i++) bound[i] += residual[i].First * Interval.Symmetric(halfWidths[k]);
        }

        return bound;
    }

    // Displacements by the signs of their coordinates: what moves together in a body's unknowns is told apart less far over half the way.
    private static IEnumerable<Interval[]> Orthants(double[] halfWidths)
    {
        int d = halfWidths.Length;
        if (d > MostInOrthants)
        {
            yield return [.. halfWidths.Select(Interval.Symmetric)];
            yield break;
        }

        for (int signs = 0; signs < 1 << d; signs++)
            yield return [.. halfWidths.Select((h, k) => ((signs >> k) & 1) == 0 ? new Interval(0, h) : new Interval(-h, 0))];
    }

    // The slope of F(A d) at the centre, direction by direction, so that its cancellation is seen: only rounding remains.
    private Interval[] SlopeAtCentre(double[] centreSettings, double[] halfWidths)
    {
        var sum = new Interval[n];
        var u = new Taylor2<Interval>[n];
        var residual = new Taylor2<Interval>[n];
        for (int k = 0; k < centreSettings.Length; k++)
        {
            for (int i = 0; i < n; i++) u[i] = new(Interval.Zero, Interval.From(slope[(i * centreSettings.Length) + k]), Interval.Zero);
            linkage.Evaluate(linkage.Place<Taylor2<Interval>>(bodies, loads, u), Settings(centreSettings, k), residual);
            for (int i = 0; i < n; i++) sum[i] += residual[i].First * Interval.Symmetric(halfWidths[k]);
        }

        return sum;
    }

    // I - C F_u over the block.
    private Interval[] Defect(double[] inverse, Interval[] jacobian)
    {
        var defect = new Interval[n * n];
        for (int i = 0; i < n; i++) defect[(i * n) + i] = Interval.From(1);
        for (int k = 0; k < n; k++)
            for (int j = 0; j < n; j++)
            {
                // Each joint knows two bodies: most of the matrix is zero.
                Interval entry = jacobian[(k * n) + j];
                if (entry == Interval.Zero) continue;
                for (int i = 0; i < n; i++) defect[(i * n) + j] -= Interval.From(inverse[(i * n) + k]) * entry;
            }

        return defect;
    }

    private Interval[] Jacobian(Interval[] box, Interval[] pose)
    {
        var jacobian = new Interval[n * n];
        linkage.Derivatives<Interval>(bodies, loads, box, pose, jacobian, driven?.Places);
        return jacobian;
    }

    private bool ProveDerivatives(double[] inverse)
    {
        int d = pose.Length;
        Interval[] defect = Defect(inverse, Jacobian(box, pose));
        var jets = new MotionJet<Interval>[d][];
        for (int k = 0; k < d; k++)
        {
            var u = new Taylor2<Interval>[n];
            for (int i = 0; i < n; i++) u[i] = new(box[i], Interval.Zero, Interval.Zero);
            Interval[]? first = Linear(defect, inverse, RightSide(u, k, secondOrder: false));
            if (first is null) return false;
            for (int i = 0; i < n; i++) u[i] = u[i] with { First = first[i] };
            Interval[]? second = Linear(defect, inverse, RightSide(u, k, secondOrder: true));
            if (second is null) return false;
            for (int i = 0; i < n; i++) u[i] = u[i] with { Second = second[i] };
            jets[k] = new MotionJet<Interval>[bodies.Length];
            jets[k][0] = MotionJet<Interval>.Still;
            for (int body = 1; body < bodies.Length; body++)
                jets[k][body] = linkage.Driven.Contains(body)
                    ? driven!.Jets[k][body]
                    : MotionJet<Interval>.Of(linkage, linkage.Place<Taylor2<Interval>>(bodies, loads, u, driven?.Along(k)), body);
        }

        Jets = jets;
        return true;
    }

    private Interval[] RightSide(Taylor2<Interval>[] u, int coordinate, bool secondOrder)
    {
        var s = new Taylor2<Interval>[pose.Length];
        for (int k = 0; k < s.Length; k++) s[k] = new(pose[k], Interval.From(k == coordinate ? 1 : 0), Interval.Zero);
        var residual = new Taylor2<Interval>[n];
        linkage.Evaluate(linkage.Place<Taylor2<Interval>>(bodies, loads, u, driven?.Along(coordinate)), s, residual);
        var right = new Interval[n];
        for (int i = 0; i < n; i++) right[i] = -(secondOrder ? residual[i].Second : residual[i].First);
        return right;
    }

    // All x with J x = b for some J of the enclosed matrix: x = C b + (I - C J) x, contracted from a box that the norm of the defect allows.
    private Interval[]? Linear(Interval[] defect, double[] inverse, Interval[] right)
    {
        Interval[] start = Precondition(inverse, right);
        double[] weights = Weights(defect);
        double norm = Norm(defect, weights), size = 0;
        for (int i = 0; i < n; i++) size = Math.Max(size, start[i].Magnitude / weights[i]);
        if (!(norm < 0.99) || !double.IsFinite(size)) return null;
        var x = new Interval[n];
        // In the weighted norm |x| <= |C b| / (1 - |I - C J|); a little more covers the rounding of this line itself.
        for (int i = 0; i < n; i++) x[i] = Interval.Symmetric(weights[i] * size / (1 - norm) * (1 + 1e-9));
        for (int pass = 0; pass < 6; pass++)
            for (int i = 0; i < n; i++)
            {
                Interval sum = start[i];
                for (int j = 0; j < n; j++) sum += defect[(i * n) + j] * x[j];
                x[i] = sum.Intersect(x[i]);
            }

        return x;
    }

    private double Norm(Interval[] defect, double[] weights)
    {
        double norm = 0;
        for (int i = 0; i < n; i++)
        {
            double row = 0;
            for (int j = 0; j < n; j++) row += defect[(i * n) + j].Magnitude * weights[j];
            norm = Math.Max(norm, row / weights[i]);
        }

        return norm;
    }

    // Weights in which the defect's norm is near its least, its spectral radius: loads and places need not be alike in size.
    private double[] Weights(Interval[] defect)
    {
        var weights = new double[n];
        Array.Fill(weights, 1);
        for (int pass = 0; pass < 20; pass++)
        {
            var next = new double[n];
            double most = 0;
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++) next[i] += defect[(i * n) + j].Magnitude * weights[j];
                most = Math.Max(most, next[i]);
            }

            if (!(most > 0) || !double.IsFinite(most)) return weights;
            for (int i = 0; i < n; i++) weights[i] = (0.5 * weights[i]) + (0.5 * next[i] / most) + 1e-12;
        }

        return weights;
    }

    private double[] InverseAtMiddle(Interval[] narrow, Interval[] part)
    {
        double[] middle = [.. narrow.Select(x => x.Middle)];
        var moved = new RigidMotion[bodies.Length];
        Displacement.Apply(linkage, bodies, middle, 1, moved);
        double[] carried = [.. loads.Select((load, i) => load + middle[linkage.BodyUnknowns + i])];
        return Inverse(linkage, moved, carried, [.. part.Select(p => p.Middle)]);
    }

    private static double[] Inverse(Linkage linkage, RigidMotion[] bodies, double[] loads, double[] settings) =>
        SquareMatrix.Factor(linkage.Derivatives(bodies, loads, settings), linkage.Unknowns).Inverse();

    private static void SlopeColumn(Linkage linkage, RigidMotion[] centre, double[] loads, double[] settings, double[] inverse, int coordinate, double[] slope, DrivenJets<Real>? driven)
    {
        int n = linkage.Unknowns, d = settings.Length;
        var pose = new Taylor2<Real>[d];
        for (int k = 0; k < d; k++) pose[k] = new(new Real(settings[k]), new Real(k == coordinate ? 1 : 0), default);
        var residual = new Taylor2<Real>[n];
        linkage.Evaluate(linkage.Place<Taylor2<Real>>(centre, loads, new Taylor2<Real>[n], driven?.Along(coordinate)), pose, residual);
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            for (int j = 0; j < n; j++) sum -= inverse[(i * n) + j] * residual[j].First.Value;
            slope[(i * d) + coordinate] = sum;
        }
    }

    private static Taylor2<Interval>[] Settings(double[] centre, int coordinate)
    {
        var s = new Taylor2<Interval>[centre.Length];
        for (int k = 0; k < s.Length; k++) s[k] = new(Interval.From(centre[k]), Interval.From(k == coordinate ? 1 : 0), Interval.Zero);
        return s;
    }

    private Interval[] Times(double[] matrix, Interval[] way)
    {
        int d = way.Length;
        var product = new Interval[n];
        for (int i = 0; i < n; i++)
            for (int k = 0; k < d; k++) product[i] += Interval.From(matrix[(i * d) + k]) * way[k];
        return product;
    }

    private Interval[] Precondition(double[] inverse, Interval[] right)
    {
        var product = new Interval[n];
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) product[i] += Interval.From(inverse[(i * n) + j]) * right[j];
        return product;
    }

    private static Interval[] Inflate(Interval[] box, double share) =>
        [.. box.Select(b => new Interval(b.Low - (share * b.Width) - 1e-9, b.High + (share * b.Width) + 1e-9))];
}
