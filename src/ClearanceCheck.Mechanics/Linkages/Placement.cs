using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Places of all bodies as a known pose of each and a small unknown displacement from there, in any kind of number.</summary>
/// <remarks>
/// Six unknowns a free body: translation (mm) and a Cayley vector times twice <see cref="Linkage.RotationLengthMm"/>, so that all six are mm
/// and alike in size. The displacement turns the body about its centre p after the known pose: x = P(p) + dt + Cayley(c) R (y - p).
/// A body that turns on another has one unknown: the tangent of half its further turn, times twice that length; one that slides has one in mm.
/// After the bodies' unknowns come those of the loads in the joints, where soft joints make the loads count.
/// </remarks>
public readonly ref struct Placement<T>
    where T : unmanaged, IReal<T>
{
    private readonly Linkage linkage;
    private readonly ReadOnlySpan<RigidMotion> bases;
    private readonly ReadOnlySpan<double> loads;
    private readonly ReadOnlySpan<T> unknowns;
    private readonly ReadOnlySpan<BodyFrame<T>> driven;

    // Where driven bodies are told nothing of, they stand at their known poses.
    internal Placement(Linkage linkage, ReadOnlySpan<RigidMotion> bases, ReadOnlySpan<double> loads, ReadOnlySpan<T> unknowns, ReadOnlySpan<BodyFrame<T>> driven)
    {
        this.driven = driven;
        this.linkage = linkage;
        this.bases = bases;
        this.loads = loads;
        this.unknowns = unknowns;
    }

    public Vector3<T> Point(int body, Vector3d point)
    {
        Carriage carriage = linkage.Carriages[body];
        switch (carriage.Kind)
        {
            case CarriageKind.Chassis:
                return Vector3<T>.From(point);
            case CarriageKind.Driven:
                return driven.IsEmpty ? Vector3<T>.From(bases[body].Apply(point)) : driven[body].Point(point);
            case CarriageKind.Free:
                return Centre(body) + Arm(body, point);
            case CarriageKind.Turning:
                Vector3d about = Relative(body, carriage.Parent).Apply(point) - carriage.Point;
                return PointOf(carriage.Parent, Vector3<T>.From(carriage.Point) + Vector3<T>.TurnByCayley(Turn(carriage), Vector3<T>.From(about)));
            default:
                return PointOf(carriage.Parent, Vector3<T>.From(Relative(body, carriage.Parent).Apply(point)) + Turn(carriage));
        }
    }

    /// <summary>Where the body's centre is.</summary>
    public Vector3<T> Centre(int body) => linkage.Carriages[body].Kind == CarriageKind.Free
        ? Vector3<T>.From(bases[body].Apply(linkage.Centres[body])) + Shift(body)
        : Point(body, linkage.Centres[body]);

    /// <summary>From the body's centre to one of its points, chassis frame.</summary>
    public Vector3<T> Arm(int body, Vector3d point) => Direction(body, point - linkage.Centres[body]);

    public Vector3<T> Direction(int body, Vector3d direction)
    {
        Carriage carriage = linkage.Carriages[body];
        switch (carriage.Kind)
        {
            case CarriageKind.Chassis:
                return Vector3<T>.From(direction);
            case CarriageKind.Driven:
                return driven.IsEmpty ? Vector3<T>.From(bases[body].Rotation.Apply(direction)) : driven[body].Direction(Vector3<T>.From(direction));
            case CarriageKind.Free:
                return Vector3<T>.TurnByCayley(Cayley(body), Vector3<T>.From(bases[body].Rotation.Apply(direction)));
            case CarriageKind.Turning:
                Vector3d before = Relative(body, carriage.Parent).Rotation.Apply(direction);
                return DirectionOf(carriage.Parent, Vector3<T>.TurnByCayley(Turn(carriage), Vector3<T>.From(before)));
            default:
                return Direction(carriage.Parent, Relative(body, carriage.Parent).Rotation.Apply(direction));
        }
    }

    /// <summary>The load in one of the joints' equations, mm: times the linkage's reference stiffness it is N.</summary>
    public T Load(int index) => T.From(loads[index]) + unknowns[linkage.BodyUnknowns + index];

    /// <summary>The body that carries another, and the line along which or about which that one moves, chassis frame.</summary>
    public (int Parent, Vector3<T> Line) Line(int body)
    {
        Carriage carriage = linkage.Carriages[body];
        return (carriage.Parent, Direction(carriage.Parent, carriage.Axis));
    }

    /// <summary>The angle by which a body that turns on another has turned since the measured state, rad.</summary>
    public T Angle(int body)
    {
        Carriage carriage = linkage.Carriages[body];
        Rotation before = Relative(body, carriage.Parent).Rotation;
        double known = 2 * Trigonometry.Atan2(Vector3d.Dot(new Vector3d(before.X, before.Y, before.Z), carriage.Axis), before.W);
        T tangent = unknowns[carriage.FirstUnknown] * T.From(1 / (2 * Linkage.RotationLengthMm));
        return T.From(known) + (tangent * ArcSeries.Ratio(T.Square(tangent)) * T.From(2));
    }

    /// <summary>How far a body that slides along another has slid since the measured state, mm.</summary>
    public T Slid(int body)
    {
        Carriage carriage = linkage.Carriages[body];
        return T.From(Vector3d.Dot(Relative(body, carriage.Parent).Translation, carriage.Axis)) + unknowns[carriage.FirstUnknown];
    }

    /// <summary>The vector part of the body's whole quaternion over its scalar part: the Cayley vector since the measured state.</summary>
    public Vector3<T> WholeCayley(int body) => RelativeCayley(0, body);

    /// <summary>The Cayley vector of one body's turn against another since the measured state, in the first body's frame.</summary>
    public Vector3<T> RelativeCayley(int first, int second)
    {
        (T w, Vector3<T> v) = Quaternion(second);
        if (first != 0)
        {
            // conj(a) b for a = (p, q): (p w + q.v, p v - w q - q x v).
            (T p, Vector3<T> q) = Quaternion(first);
            (w, v) = ((p * w) + Vector3<T>.Dot(q, v), (v * p) - (q * w) - Vector3<T>.Cross(q, v));
        }

        return v * (T.From(1) / w);
    }

    // Of any length: only ratios are asked for.
    private (T W, Vector3<T> V) Quaternion(int body)
    {
        Carriage carriage = linkage.Carriages[body];
        return carriage.Kind switch
        {
            CarriageKind.Chassis => (T.From(1), default),
            CarriageKind.Driven => driven.IsEmpty ? Times(T.From(1), default, bases[body].Rotation) : driven[body].Quaternion,
            CarriageKind.Free => Times(T.From(1), Cayley(body), bases[body].Rotation),
            CarriageKind.Turning => Times(Quaternion(carriage.Parent), Times(T.From(1), Turn(carriage), Relative(body, carriage.Parent).Rotation)),
            _ => Times(Quaternion(carriage.Parent), Times(T.From(1), default, Relative(body, carriage.Parent).Rotation)),
        };
    }

    private static (T W, Vector3<T> V) Times(T w, Vector3<T> v, Rotation r) => Times((w, v), (T.From(r.W), Vector3<T>.From(new Vector3d(r.X, r.Y, r.Z))));

    private static (T W, Vector3<T> V) Times((T W, Vector3<T> V) a, (T W, Vector3<T> V) b) =>
        ((a.W * b.W) - Vector3<T>.Dot(a.V, b.V), (b.V * a.W) + (a.V * b.W) + Vector3<T>.Cross(a.V, b.V));

    private Vector3<T> PointOf(int body, Vector3<T> point)
    {
        Carriage carriage = linkage.Carriages[body];
        switch (carriage.Kind)
        {
            case CarriageKind.Chassis:
                return point;
            case CarriageKind.Driven:
                return driven.IsEmpty ? Turned(bases[body].Rotation, point) + Vector3<T>.From(bases[body].Translation) : driven[body].Point(point);
            case CarriageKind.Free:
                return Centre(body) + DirectionOf(body, point - Vector3<T>.From(linkage.Centres[body]));
            default:
                RigidMotion before = Relative(body, carriage.Parent);
                Vector3<T> there = Turned(before.Rotation, point) + Vector3<T>.From(before.Translation);
                if (carriage.Kind == CarriageKind.Sliding) return PointOf(carriage.Parent, there + Turn(carriage));
                var about = Vector3<T>.From(carriage.Point);
                return PointOf(carriage.Parent, about + Vector3<T>.TurnByCayley(Turn(carriage), there - about));
        }
    }

    private Vector3<T> DirectionOf(int body, Vector3<T> direction)
    {
        Carriage carriage = linkage.Carriages[body];
        return carriage.Kind switch
        {
            CarriageKind.Chassis => direction,
            CarriageKind.Driven => driven.IsEmpty ? Turned(bases[body].Rotation, direction) : driven[body].Direction(direction),
            CarriageKind.Free => Vector3<T>.TurnByCayley(Cayley(body), Turned(bases[body].Rotation, direction)),
            CarriageKind.Turning => DirectionOf(
                carriage.Parent, Vector3<T>.TurnByCayley(Turn(carriage), Turned(Relative(body, carriage.Parent).Rotation, direction))),
            _ => DirectionOf(carriage.Parent, Turned(Relative(body, carriage.Parent).Rotation, direction)),
        };
    }

    private static Vector3<T> Turned(Rotation r, Vector3<T> v) =>
        (Vector3<T>.From(r.Apply(Vector3d.UnitX)) * v.X) + (Vector3<T>.From(r.Apply(Vector3d.UnitY)) * v.Y) + (Vector3<T>.From(r.Apply(Vector3d.UnitZ)) * v.Z);

    private RigidMotion Relative(int body, int parent) => parent == 0 ? bases[body] : bases[parent].Inverse * bases[body];

    // The Cayley vector of a turn, or the way of a slide.
    private Vector3<T> Turn(in Carriage carriage)
    {
        T unknown = unknowns[carriage.FirstUnknown];
        return Vector3<T>.From(carriage.Axis) * (carriage.Kind == CarriageKind.Sliding ? unknown : unknown * T.From(1 / (2 * Linkage.RotationLengthMm)));
    }

    private Vector3<T> Shift(int body)
    {
        int i = linkage.Carriages[body].FirstUnknown;
        return new Vector3<T>(unknowns[i], unknowns[i + 1], unknowns[i + 2]);
    }

    private Vector3<T> Cayley(int body)
    {
        int i = linkage.Carriages[body].FirstUnknown + 3;
        return new Vector3<T>(unknowns[i], unknowns[i + 1], unknowns[i + 2]) * T.From(1 / (2 * Linkage.RotationLengthMm));
    }
}
