using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Rigid bodies with exact and soft joints and one setting a coordinate: as many independent equations as unknowns.</summary>
/// <remarks>
/// In the measured state every body stands at the identity: its coordinates are those of the vehicle frame then.
/// Hinges that carry a body are built into its place (see <see cref="Carriage"/>). Equations that repeat what others already say are left
/// out of the solution, remembered in <see cref="Redundant"/> and checked after every solution. Where exact joints leave freedom that soft
/// ones decide, the balance of forces joins the equations and loads join the unknowns (see <see cref="Linkages.Equilibrium"/>).
/// </remarks>
public sealed class Linkage
{
    /// <summary>An angle counts as this many mm a radian, so that unknowns and residuals are alike in size.</summary>
    public const double RotationLengthMm = 500;

    // Axes that differ by less, some 25 degrees, are one axis measured twice.
    private const double LeastCosine = 0.9;

    private readonly Equilibrium? equilibrium;
    private readonly int[] rowsBefore;
    private readonly int[] usedBefore;
    private readonly int[] softBefore;
    private readonly ImmutableArray<ImmutableArray<int>> feeling = [];

    // Its equations are not chosen yet.
    internal Linkage(ImmutableArray<string> bodies, ImmutableArray<Joint> joints, int coordinates, ImmutableArray<int> driven)
    {
        (Bodies, Joints, Coordinates, Driven) = (bodies, joints, coordinates, driven);
        (Carriages, ImmutableArray<bool> isCarriage, Order) = Linkages.Carriages.Of(bodies.Length, joints, driven);
        EquationCounts = [.. joints.Select((j, i) => isCarriage[i] ? 0 : j.Equations)];
        Centres = BodyCentres.Of(Carriages, joints);
        BodyUnknowns = Carriages.Sum(c => c.Unknowns);
        ReferenceStiffness = joints.SelectMany(j => SoftRows.Stiffness(j)).Append(0).Max() is > 0 and var stiffest ? stiffest : 1;
        SoftStiffness = [.. joints.Select(SoftRows.Stiffness)];
        (rowsBefore, usedBefore, softBefore) = (new int[joints.Length], new int[joints.Length], new int[joints.Length]);
        UsedRows = [];
    }

    // The same, its equations chosen.
    internal Linkage(Linkage draft, ReadOnlySpan<bool> used, double[] rows)
        : this(draft.Bodies, draft.Joints, draft.Coordinates, draft.Driven)
    {
        UsedRows = [.. used];
        Joint[] owners = [.. Joints.SelectMany((j, i) => Enumerable.Repeat(j, EquationCounts[i]))];
        Redundant = [.. owners.Where((_, row) => !UsedRows[row]).Select(j => j.Name).Distinct()];
        int exact = UsedRows.Count(u => u);
        if (exact < BodyUnknowns)
        {
            int[] kept = [.. Enumerable.Range(0, owners.Length).Where(r => UsedRows[r])];
            equilibrium = Equilibrium.Of(this, [.. kept.SelectMany(r => rows[(r * BodyUnknowns)..((r + 1) * BodyUnknowns)])], [.. kept.Select(r => owners[r])]);
        }

        Loads = equilibrium?.Loads ?? 0;
        for (int i = 1; i < Joints.Length; i++)
        {
            rowsBefore[i] = rowsBefore[i - 1] + EquationCounts[i - 1];
            usedBefore[i] = usedBefore[i - 1] + UsedRows.AsSpan().Slice(rowsBefore[i - 1], EquationCounts[i - 1]).Count(true);
            softBefore[i] = softBefore[i - 1] + SoftStiffness[i - 1].Count(s => s > 0);
        }

        feeling = Feeling();
        SquareMatrix start = SquareMatrix.Factor(Derivatives(Start, new double[Loads], StartSettings), Unknowns);
        (IsMirrored, StartPivot) = (start.DeterminantIsNegative, start.SmallestPivot);
    }

    // One like another, measured a little differently: the same equations count.
    private Linkage(Linkage like, ImmutableArray<Joint> joints)
        : this(like.Bodies, joints, like.Coordinates, like.Driven)
    {
        (UsedRows, Redundant, equilibrium, Loads) = (like.UsedRows, like.Redundant, like.equilibrium, like.Loads);
        (rowsBefore, usedBefore, softBefore, feeling) = (like.rowsBefore, like.usedBefore, like.softBefore, like.feeling);
        (IsMirrored, StartPivot) = (like.IsMirrored, like.StartPivot);
    }

    /// <summary>Names; the first is the chassis, which does not move.</summary>
    public ImmutableArray<string> Bodies { get; }

    public ImmutableArray<Joint> Joints { get; }

    /// <summary>Number of the pose's coordinates.</summary>
    public int Coordinates { get; }

    /// <summary>Bodies whose places are given with the pose: another linkage has been solved for them.</summary>
    internal ImmutableArray<int> Driven { get; }

    /// <summary>Unknowns of the bodies and, where soft joints decide, of the loads.</summary>
    public int Unknowns => BodyUnknowns + Loads;

    /// <summary>Joints with an equation that the others already imply.</summary>
    public ImmutableArray<string> Redundant { get; } = [];

    /// <summary>True when soft joints decide where the bodies stand.</summary>
    public bool IsSoft => equilibrium is not null;

    /// <summary>What a load of 1 mm stands for, N/mm: the stiffest soft joint.</summary>
    public double ReferenceStiffness { get; }

    /// <summary>How each body is carried.</summary>
    internal ImmutableArray<Carriage> Carriages { get; }

    /// <summary>The bodies in an order in which what carries comes first.</summary>
    internal ImmutableArray<int> Order { get; }

    /// <summary>How many equations each joint makes: none where it carries a body.</summary>
    internal ImmutableArray<int> EquationCounts { get; }

    /// <summary>For each joint the stiffness of its directions, N/mm; none for an exact one.</summary>
    internal ImmutableArray<ImmutableArray<double>> SoftStiffness { get; }

    /// <summary>What each body's displacements turn about, body coordinates, mm.</summary>
    internal ImmutableArray<Vector3d> Centres { get; }

    internal int BodyUnknowns { get; }

    internal int Loads { get; }

    /// <summary>For each equation whether it is solved for; the rest are checked.</summary>
    internal ImmutableArray<bool> UsedRows { get; }

    /// <summary>The sign of the equations' determinant in the measured state; another sign would be another branch.</summary>
    internal bool IsMirrored { get; }

    /// <summary>The smallest pivot in the measured state relative to the largest.</summary>
    internal double StartPivot { get; }

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
            foreach (Joint joint in Joints)
            {
                if (joint is Joint.Travel travel) settings[travel.Coordinate] = travel.RideOffsetMm;
                if (joint is Joint.Turn turn) settings[turn.Coordinate] = turn.OffsetRad;
                if (joint is Joint.Shift shift) settings[shift.Coordinate] = shift.OffsetMm;
            }

            return settings;
        }
    }

    /// <summary>What one unit of each coordinate counts as, mm: angles as at <see cref="RotationLengthMm"/>.</summary>
    internal double[] CoordinateLengths
    {
        get
        {
            var lengths = new double[Coordinates];
            Array.Fill(lengths, 1);
            foreach (Joint joint in Joints)
            {
                if (joint is Joint.Turn turn) lengths[turn.Coordinate] = RotationLengthMm;
                if (joint is Joint.Torque torque) lengths[torque.Coordinate] = RotationLengthMm;
            }

            return lengths;
        }
    }

    /// <summary>Builds a linkage, or says why these bodies and joints make none.</summary>
    /// <param name="bodies">Names; the first is the chassis.</param>
    /// <param name="joints">Joints and settings.</param>
    /// <param name="coordinates">Number of coordinates; each has one setting.</param>
    public static (Linkage? Linkage, LinkageFault? Fault) Build(IEnumerable<string> bodies, IEnumerable<Joint> joints, int coordinates) =>
        LinkageBuilder.Build([.. bodies], [.. joints], coordinates);

    /// <summary>The same linkage with points measured a little differently; null where these are not the same joints.</summary>
    /// <param name="joints">As they were given to <see cref="Build"/>.</param>
    public Linkage? Again(IEnumerable<Joint> joints) => LinkageBuilder.All(Bodies, [.. joints]) is var all && IsLike(all) ? new Linkage(this, all) : null;

    /// <summary>The bodies displaced from known places by small unknowns.</summary>
    /// <param name="bodies">The known places.</param>
    /// <param name="loads">The known loads.</param>
    /// <param name="unknowns">The displacements.</param>
    /// <param name="driven">Where driven bodies are, body by body of the linkage; empty for their known places.</param>
    internal Placement<T> Place<T>(
        ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> loads, ReadOnlySpan<T> unknowns, ReadOnlySpan<BodyFrame<T>> driven = default)
        where T : unmanaged, IReal<T> => new(this, bodies, loads, unknowns, driven);

    /// <summary>True for a body that forces move: its place depends on all others that they move.</summary>
    internal bool IsLoaded(int body)
    {
        Carriage carriage = Carriages[body];
        for (int i = 0; i < carriage.Unknowns; i++)
            if (equilibrium?.IsBalanced[carriage.FirstUnknown + i] == true) return true;
        return false;
    }

    /// <summary>How many equations of a joint are solved for.</summary>
    internal int UsedEquations(int joint) => UsedRows.AsSpan().Slice(rowsBefore[joint], EquationCounts[joint]).Count(true);

    /// <summary>Loads in the joints to start from in a pose.</summary>
    internal double[] LoadsAt(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings) => equilibrium?.LoadsAt(this, bodies, settings) ?? [];

    /// <summary>The number of the load of a joint's only equation; null where it carries none.</summary>
    internal int? LoadOf(int joint)
    {
        if (equilibrium is null || EquationCounts[joint] != 1) return null;
        int row = EquationCounts.AsSpan()[..joint].ToArray().Sum(), used = UsedRows.AsSpan()[..row].Count(true);
        return UsedRows[row] && equilibrium.LoadOfRow[used] is >= 0 and var load ? load : null;
    }

    /// <summary>True when the pose whose derivatives these are is one in which the linkage stays: always, where nothing is soft.</summary>
    internal bool IsStable(double[] matrix) => equilibrium?.IsMinimum(matrix, Unknowns) ?? true;

    /// <summary>Evaluates the equations that are solved for: those of the joints, those of the soft directions, then the balances of forces.</summary>
    internal void Evaluate<T>(in Placement<T> at, ReadOnlySpan<T> settings, Span<T> residual)
        where T : unmanaged, IReal<T>
    {
        Span<Vector3<T>> forces = stackalloc Vector3<T>[Bodies.Length], moments = stackalloc Vector3<T>[Bodies.Length];
        var on = new Wrenches<T>(this, forces, moments);
        for (int i = 0; i < Joints.Length; i++) EvaluateJoint(i, at, settings, residual, on);
        if (equilibrium is not null) Balance(at, residual, on);
    }

    /// <summary>The equations' derivatives with respect to the unknowns, row by row, in any kind of number.</summary>
    /// <remarks>An unknown is felt by the joints of its own body and of what that carries, a load by its own joint: only those are evaluated again.</remarks>
    internal void Derivatives<T>(
        ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> loads, ReadOnlySpan<T> at, ReadOnlySpan<T> settings, Span<T> matrix, ReadOnlySpan<BodyFrame<T>> driven = default)
        where T : unmanaged, IReal<T>
    {
        int n = Unknowns;
        var unknowns = new Tangent<T>[n];
        var column = new Tangent<T>[n];
        var pose = new Tangent<T>[settings.Length];
        for (int i = 0; i < n; i++) unknowns[i] = new(at[i], default);
        for (int i = 0; i < settings.Length; i++) pose[i] = new(settings[i], default);
        var held = new BodyFrame<Tangent<T>>[driven.Length];
        for (int i = 0; i < driven.Length; i++) held[i] = driven[i].As(static x => new Tangent<T>(x, default));
        Span<Vector3<T>> forces = stackalloc Vector3<T>[Bodies.Length], moments = stackalloc Vector3<T>[Bodies.Length];
        if (equilibrium is not null) Wrench(Place(bodies, loads, at), settings, new Wrenches<T>(this, forces, moments));
        Span<Vector3<Tangent<T>>> ownForces = stackalloc Vector3<Tangent<T>>[Bodies.Length], ownMoments = stackalloc Vector3<Tangent<T>>[Bodies.Length];
        for (int j = 0; j < n; j++)
        {
            unknowns[j] = unknowns[j] with { First = T.From(1) };
            Placement<Tangent<T>> placed = Place<Tangent<T>>(bodies, loads, unknowns, held);
            Array.Clear(column);
            var on = new Wrenches<Tangent<T>>(this, ownForces, ownMoments);
            foreach (int joint in feeling[j]) EvaluateJoint(joint, placed, pose, column, on);
            if (equilibrium is not null)
            {
                for (int body = 0; body < forces.Length; body++) (ownForces[body], ownMoments[body]) = (WithValue(ownForces[body], forces[body]), WithValue(ownMoments[body], moments[body]));
                Balance(placed, column, on);
            }

            for (int i = 0; i < n; i++) matrix[(i * n) + j] = column[i].First;
            unknowns[j] = unknowns[j] with { First = default };
        }
    }

    // The forces of all joints; their equations are not wanted.
    private void Wrench<T>(in Placement<T> at, ReadOnlySpan<T> settings, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        Span<T> unused = new T[Unknowns];
        for (int i = 0; i < Joints.Length; i++) EvaluateJoint(i, at, settings, unused, on);
    }

    private static Vector3<Tangent<T>> WithValue<T>(Vector3<Tangent<T>> change, Vector3<T> value)
        where T : unmanaged, IReal<T> => new(new(value.X, change.X.First), new(value.Y, change.Y.First), new(value.Z, change.Z.First));

    private void EvaluateJoint<T>(int joint, in Placement<T> at, ReadOnlySpan<T> settings, Span<T> residual, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        Span<T> own = stackalloc T[SoftRows.Most], loads = stackalloc T[SoftRows.Most];
        int count = EquationCounts[joint];
        if (count > 0)
        {
            (int row, int used) = (rowsBefore[joint], usedBefore[joint]);
            bool isLoaded = false;
            JointEquations.Evaluate(Joints[joint], at, settings, own);
            for (int k = 0; k < count; k++)
            {
                loads[k] = default;
                if (!UsedRows[row++]) continue;
                residual[used] = own[k];
                if (equilibrium?.LoadOfRow[used] is >= 0 and var load) (loads[k], isLoaded) = (at.Load(load), true);
                used++;
            }

            if (isLoaded) JointForces.AddExact(Joints[joint], at, loads, on);
        }

        if (equilibrium is null) return;
        if (Joints[joint] is Joint.Torque torque)
            JointForces.AddTorque(torque, settings[torque.Coordinate] * T.From(torque.NmmPerUnit / ReferenceStiffness), on);
        ImmutableArray<double> stiffness = SoftStiffness[joint];
        if (stiffness.IsEmpty) return;
        int direction = softBefore[joint], softRow = equilibrium.LoadOfRow.Length + direction;
        for (int k = 0; k < stiffness.Length; k++) loads[k] = stiffness[k] > 0 ? at.Load(equilibrium.ExactLoads + direction++) : default;
        SoftRows.Equations(Joints[joint], at, stiffness.AsSpan(), ReferenceStiffness, loads, own);
        for (int k = 0; k < stiffness.Length; k++)
            if (stiffness[k] > 0) residual[softRow++] = own[k];
        JointForces.AddSoft(Joints[joint], at, loads, ReferenceStiffness, on);
    }

    private void Balance<T>(in Placement<T> at, Span<T> residual, Wrenches<T> on)
        where T : unmanaged, IReal<T>
    {
        Span<T> balances = stackalloc T[BodyUnknowns];
        on.Write(at, balances);
        int row = equilibrium!.LoadOfRow.Length + equilibrium.Soft;
        for (int i = 0; i < BodyUnknowns; i++)
            if (equilibrium.IsBalanced[i]) residual[row++] = balances[i];
    }

    /// <summary>The residuals in a pose, mm; returns the largest.</summary>
    internal double Residual(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> loads, ReadOnlySpan<double> settings, Span<double> residual)
    {
        int n = Unknowns;
        Span<Real> zero = new Real[n], values = new Real[n], pose = new Real[settings.Length];
        for (int i = 0; i < settings.Length; i++) pose[i] = new Real(settings[i]);
        Evaluate(Place<Real>(bodies, loads, zero), (ReadOnlySpan<Real>)pose, values);
        double size = 0;
        for (int i = 0; i < n; i++)
        {
            residual[i] = values[i].Value;
            // Not a number is no solution.
            size = double.IsNaN(residual[i]) ? double.PositiveInfinity : Math.Max(size, Math.Abs(residual[i]));
        }

        return size;
    }

    /// <summary>The largest residual of the equations that were left out, mm: above zero when the redundancy was only apparent.</summary>
    internal double LargestUnused(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> settings)
    {
        if (Redundant.IsEmpty) return 0;
        Span<Real> zero = new Real[Unknowns], pose = new Real[settings.Length], own = stackalloc Real[5];
        for (int i = 0; i < settings.Length; i++) pose[i] = new Real(settings[i]);
        Placement<Real> at = Place<Real>(bodies, new double[Loads], zero);
        int row = 0;
        double largest = 0;
        for (int i = 0; i < Joints.Length; i++)
        {
            if (EquationCounts[i] == 0) continue;
            JointEquations.Evaluate(Joints[i], at, (ReadOnlySpan<Real>)pose, own);
            for (int k = 0; k < EquationCounts[i]; k++)
                if (!UsedRows[row++]) largest = Math.Max(largest, Math.Abs(own[k].Value));
        }

        return largest;
    }

    /// <summary>The equations' derivatives with respect to the unknowns in a pose, row by row.</summary>
    internal double[] Derivatives(ReadOnlySpan<RigidMotion> bodies, ReadOnlySpan<double> loads, ReadOnlySpan<double> settings)
    {
        int n = Unknowns;
        var pose = new Real[settings.Length];
        for (int i = 0; i < pose.Length; i++) pose[i] = new Real(settings[i]);
        var matrix = new Real[n * n];
        Derivatives<Real>(bodies, loads, new Real[n], pose, matrix);
        return MemoryMarshal.Cast<Real, double>(matrix).ToArray();
    }

    // For each unknown the joints that feel it.
    private ImmutableArray<ImmutableArray<int>> Feeling()
    {
        var feeling = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach ((Carriage carriage, int body) in Carriages.Select((c, i) => (c, i)).OrderBy(c => c.c.FirstUnknown).ThenBy(c => c.c.Unknowns))
        {
            ImmutableArray<int> own = [.. Enumerable.Range(0, Joints.Length).Where(j => Joints[j].Bodies.ToArray().Any(b => IsCarriedBy(b, body)))];
            for (int i = 0; i < carriage.Unknowns; i++) feeling.Add(own);
        }

        for (int joint = 0; joint < Joints.Length; joint++)
            for (int k = 0, used = usedBefore[joint]; k < EquationCounts[joint]; k++)
                if (UsedRows[rowsBefore[joint] + k] && equilibrium?.LoadOfRow[used++] >= 0) feeling.Add([joint]);
        for (int joint = 0; joint < Joints.Length && equilibrium is not null; joint++)
            foreach (double stiffness in SoftStiffness[joint])
                if (stiffness > 0) feeling.Add([joint]);
        return feeling.ToImmutable();
    }

    private bool IsCarriedBy(int body, int carrier)
    {
        for (int at = body; at != 0; at = Carriages[at].Parent)
            if (at == carrier) return true;
        return false;
    }

    private bool IsLike(ImmutableArray<Joint> joints)
    {
        if (joints.Length != Joints.Length) return false;
        for (int i = 0; i < joints.Length; i++)
            if (joints[i].GetType() != Joints[i].GetType() || joints[i].Name != Joints[i].Name || !joints[i].Bodies.SequenceEqual(Joints[i].Bodies)
                || LinkageBuilder.HasNoLength(joints[i]) || !IsAlong(joints[i], Joints[i])) return false;
        return true;
    }

    // An axis that points elsewhere may turn the sign by which branches are told apart.
    private static bool IsAlong(Joint one, Joint other) => (one, other) switch
    {
        (Joint.Hinge a, Joint.Hinge b) => Vector3d.Dot(a.Axis, b.Axis) > LeastCosine * a.Axis.Length * b.Axis.Length,
        (Joint.Slide a, Joint.Slide b) => Vector3d.Dot(a.Axis, b.Axis) > LeastCosine * a.Axis.Length * b.Axis.Length,
        _ => true,
    };
}
