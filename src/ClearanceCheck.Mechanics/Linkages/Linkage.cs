using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Rigid bodies with exact joints and one setting a coordinate: as many independent equations as unknowns.</summary>
/// <remarks>
/// In the measured state every body stands at the identity: its coordinates are those of the vehicle frame then.
/// Equations that repeat what others already say are left out of the solution, remembered in <see cref="Redundant"/> and
/// checked after every solution.
/// </remarks>
public sealed class Linkage
{
    /// <summary>An angle counts as this many mm a radian, so that unknowns and residuals are alike in size.</summary>
    public const double RotationLengthMm = 500;

    private Linkage(ImmutableArray<string> bodies, ImmutableArray<Joint> joints, bool[] used, int coordinates)
    {
        Bodies = bodies;
        Joints = joints;
        Centres = BodyCentres.Of(bodies.Length, joints);
        Coordinates = coordinates;
        Unknowns = 6 * (bodies.Length - 1);
        UsedRows = [.. used];
        Redundant = [.. RowOwners(joints).Where((_, row) => !used[row]).Select(j => j.Name).Distinct()];
        IsMirrored = Jacobian(Start, StartSettings).DeterminantIsNegative;
    }

    /// <summary>Names; the first is the chassis, which does not move.</summary>
    public ImmutableArray<string> Bodies { get; }

    public ImmutableArray<Joint> Joints { get; }

    /// <summary>Number of the pose's coordinates.</summary>
    public int Coordinates { get; }

    public int Unknowns { get; }

    /// <summary>Joints with an equation that the others already imply.</summary>
    public ImmutableArray<string> Redundant { get; }

    /// <summary>What each body's displacements turn about, body coordinates, mm.</summary>
    internal ImmutableArray<Vector3d> Centres { get; }

    /// <summary>For each equation whether it is solved for; the rest are checked.</summary>
    internal ImmutableArray<bool> UsedRows { get; }

    /// <summary>The sign of the equations' determinant in the measured state; another sign would be another branch.</summary>
    internal bool IsMirrored { get; }

    /// <summary>All bodies where they were measured.</summary>
    internal RigidMotion[] Start
    {
        get
        {
            var start = new RigidMotion[Bodies.Length];
            Array.Fill(start, RigidMotion.Identity);
            return start;
        }
    }

    /// <summary>The coordinates of the measured state, mm or rad.</summary>
    public double[] StartSettings
    {
        get
        {
            var settings = new double[Coordinates];
            foreach (Joint.Travel travel in Joints.OfType<Joint.Travel>()) settings[travel.Coordinate] = travel.RideOffsetMm;
            return settings;
        }
    }

    /// <summary>Builds a linkage, or says why these bodies and joints make none.</summary>
    /// <param name="bodies">Names; the first is the chassis.</param>
    /// <param name="joints">Joints and settings.</param>
    /// <param name="coordinates">Number of coordinates; each has one setting.</param>
    public static (Linkage? Linkage, LinkageFault? Fault) Build(IEnumerable<string> bodies, IEnumerable<Joint> joints, int coordinates)
    {
        ImmutableArray<string> names = [.. bodies];
        // Settings come last, so that a setting without freedom is what gets named, not a rod.
        ImmutableArray<Joint> all = [.. joints.OrderBy(j => j is Joint.Travel ? 1 : 0)];
        foreach (Joint.Rod rod in all.OfType<Joint.Rod>())
            if (!(rod.LengthMm > 1e-6)) return (null, new LinkageFault(LinkageFaultKind.NoLength, [rod.Name]));
        all = [.. SpinHolds.For(names, all), .. all];
        var rows = new EquationRows(names.Length, all, coordinates);
        double[] matrix = rows.DerivativesAtStart();
        int unknowns = 6 * (names.Length - 1);
        (bool[] independent, List<double[]> basis) = IndependentRows.Find(matrix, [.. all.Select(j => j.Equations)], unknowns);
        int first = 0;
        foreach (Joint joint in all)
        {
            if (joint is Joint.Travel && !independent[first]) return (null, new LinkageFault(LinkageFaultKind.SettingWithoutFreedom, [joint.Name]));
            first += joint.Equations;
        }

        if (basis.Count < unknowns) return (null, new LinkageFault(LinkageFaultKind.Loose, LooseBodies(names, basis)));
        return (new Linkage(names, all, independent, coordinates), null);
    }

    /// <summary>The bodies displaced from known places by small unknowns.</summary>
    internal Placement<T> Place<T>(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<T> unknowns)
        where T : unmanaged, IReal<T> => new(bodies, unknowns, Centres.AsSpan());

    /// <summary>Evaluates the equations that are solved for.</summary>
    internal void Evaluate<T>(in Placement<T> at, ReadOnlySpan<T> settings, Span<T> residual)
        where T : unmanaged, IReal<T>
    {
        Span<T> own = stackalloc T[5];
        int row = 0, used = 0;
        foreach (Joint joint in Joints)
        {
            JointEquations.Evaluate(joint, at, settings, own);
            for (int k = 0; k < joint.Equations; k++)
                if (UsedRows[row++]) residual[used++] = own[k];
        }
    }

    /// <summary>The largest residual of the equations that were left out, mm: above zero when the redundancy was only apparent.</summary>
    internal double LargestUnused(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings)
    {
        if (Redundant.IsEmpty) return 0;
        Span<Real> zero = new Real[Unknowns], pose = new Real[settings.Length], own = stackalloc Real[5];
        for (int i = 0; i < settings.Length; i++) pose[i] = new Real(settings[i]);
        var at = Place<Real>(bodies, zero);
        int row = 0;
        double largest = 0;
        foreach (Joint joint in Joints)
        {
            JointEquations.Evaluate(joint, at, (ReadOnlySpan<Real>)pose, own);
            for (int k = 0; k < joint.Equations; k++)
                if (!UsedRows[row++]) largest = Math.Max(largest, Math.Abs(own[k].Value));
        }

        return largest;
    }

    /// <summary>The equations' derivatives with respect to the unknowns, factored.</summary>
    internal SquareMatrix Jacobian(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings)
    {
        int n = Unknowns;
        var matrix = new double[n * n];
        var unknowns = new Tangent<Real>[n];
        var column = new Tangent<Real>[n];
        var pose = new Tangent<Real>[settings.Length];
        for (int i = 0; i < settings.Length; i++) pose[i] = Tangent<Real>.From(settings[i]);
        for (int j = 0; j < n; j++)
        {
            unknowns[j] = new Tangent<Real>(default, new Real(1));
            Evaluate(Place<Tangent<Real>>(bodies, unknowns), pose, column);
            for (int i = 0; i < n; i++) matrix[(i * n) + j] = column[i].First.Value;
            unknowns[j] = default;
        }

        return SquareMatrix.Factor(matrix, n);
    }

    private static IEnumerable<Joint> RowOwners(ImmutableArray<Joint> joints) =>
        joints.SelectMany(j => Enumerable.Repeat(j, j.Equations));

    // The bodies that a direction square to all rows would still move.
    private static List<string> LooseBodies(ImmutableArray<string> names, List<double[]> basis)
    {
        int unknowns = 6 * (names.Length - 1);
        var loose = new List<string>();
        for (int body = 1; body < names.Length; body++)
        {
            double most = 0;
            for (int i = 6 * (body - 1); i < 6 * body; i++)
                most = Math.Max(most, 1 - basis.Sum(b => b[i] * b[i]));
            if (most > 1e-6) loose.Add(names[body]);
        }

        return loose;
    }
}
