using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Places of all bodies as a known pose of each and a small unknown displacement from there, in any kind of number.</summary>
/// <remarks>
/// Six unknowns a moving body: translation (mm) and a Cayley vector times twice <see cref="Linkage.RotationLengthMm"/>, so that all six are mm
/// and alike in size. The displacement turns the body about its centre p after the known pose: x = P(p) + dt + Cayley(c) R (y - p).
/// </remarks>
public readonly ref struct Placement<T>
    where T : unmanaged, IReal<T>
{
    private readonly ReadOnlySpan<RigidMotion> bases;
    private readonly ReadOnlySpan<T> unknowns;
    private readonly ReadOnlySpan<Vector3d> centres;

    public Placement(ReadOnlySpan<RigidMotion> bases, ReadOnlySpan<T> unknowns, ReadOnlySpan<Vector3d> centres)
    {
        this.bases = bases;
        this.unknowns = unknowns;
        this.centres = centres;
    }

    public Vector3<T> Point(int body, Vector3d point)
    {
        if (body == 0) return Vector3<T>.From(point);
        Vector3<T> turned = Vector3<T>.TurnByCayley(Cayley(body), Vector3<T>.From(bases[body].Rotation.Apply(point - centres[body])));
        return turned + Centre(body);
    }

    /// <summary>Where the body's centre is.</summary>
    public Vector3<T> Centre(int body) => Vector3<T>.From(bases[body].Apply(centres[body])) + Shift(body);

    public Vector3<T> Direction(int body, Vector3d direction) => body == 0
        ? Vector3<T>.From(direction)
        : Vector3<T>.TurnByCayley(Cayley(body), Vector3<T>.From(bases[body].Rotation.Apply(direction)));

    public Vector3<T> Shift(int body)
    {
        int i = 6 * (body - 1);
        return new Vector3<T>(unknowns[i], unknowns[i + 1], unknowns[i + 2]);
    }

    public Vector3<T> Cayley(int body)
    {
        int i = (6 * (body - 1)) + 3;
        return new Vector3<T>(unknowns[i], unknowns[i + 1], unknowns[i + 2]) * T.From(1 / (2 * Linkage.RotationLengthMm));
    }

    /// <summary>The vector part of the body's whole quaternion over its scalar part: the Cayley vector since the measured state.</summary>
    public Vector3<T> WholeCayley(int body)
    {
        Vector3<T> c = Cayley(body);
        Rotation r = bases[body].Rotation;
        var v = Vector3<T>.From(new Vector3d(r.X, r.Y, r.Z));
        T w = T.From(r.W);
        T scalar = w - Vector3<T>.Dot(c, v);
        return ((c * w) + v + Vector3<T>.Cross(c, v)) * (T.From(1) / scalar);
    }
}
