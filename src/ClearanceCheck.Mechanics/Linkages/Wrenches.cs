using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Forces and moments on all bodies, each about its centre, chassis frame; forces in units of the linkage's reference stiffness, so in mm.</summary>
/// <remarks>Signs are those of the energy's derivative: what has to be overcome to move the body on.</remarks>
internal readonly ref struct Wrenches<T>
    where T : unmanaged, IReal<T>
{
    private readonly Linkage linkage;
    private readonly Span<Vector3<T>> forces;
    private readonly Span<Vector3<T>> moments;

    public Wrenches(Linkage linkage, Span<Vector3<T>> forces, Span<Vector3<T>> moments)
    {
        this.linkage = linkage;
        this.forces = forces;
        this.moments = moments;
        forces.Clear();
        moments.Clear();
    }

    /// <summary>A force at a place that lies by an arm from the body's centre.</summary>
    public void Push(int body, Vector3<T> force, Vector3<T> arm)
    {
        if (body == 0) return;
        forces[body] += force;
        moments[body] += Vector3<T>.Cross(arm, force);
    }

    /// <summary>A moment.</summary>
    public void Twist(int body, Vector3<T> moment)
    {
        if (body != 0) moments[body] += moment;
    }

    /// <summary>Writes for each unknown of each body what works on it, mm; a body that turns on another hands on all but that.</summary>
    public void Write(in Placement<T> at, Span<T> byUnknown)
    {
        T perLength = T.From(1 / Linkage.RotationLengthMm);
        for (int i = linkage.Order.Length - 1; i > 0; i--)
        {
            int body = linkage.Order[i];
            Carriage carriage = linkage.Carriages[body];
            int first = carriage.FirstUnknown;
            Vector3<T> force = forces[body], moment = moments[body];
            switch (carriage.Kind)
            {
                case CarriageKind.Free:
                    (byUnknown[first], byUnknown[first + 1], byUnknown[first + 2]) = (force.X, force.Y, force.Z);
                    Vector3<T> turning = moment * perLength;
                    (byUnknown[first + 3], byUnknown[first + 4], byUnknown[first + 5]) = (turning.X, turning.Y, turning.Z);
                    continue;
                case CarriageKind.Turning:
                    // The body's centre lies on the line it turns about.
                    byUnknown[first] = Vector3<T>.Dot(moment, at.Direction(carriage.Parent, carriage.Axis)) * perLength;
                    break;
                case CarriageKind.Sliding:
                    byUnknown[first] = Vector3<T>.Dot(force, at.Direction(carriage.Parent, carriage.Axis));
                    break;
            }

            if (carriage.Parent == 0) continue;
            forces[carriage.Parent] += force;
            Vector3<T> arm = at.Centre(body) - at.Centre(carriage.Parent);
            moments[carriage.Parent] += moment + Vector3<T>.Cross(arm, force);
        }
    }
}
