using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Moves bodies by their unknowns, and reads the unknowns between two places of them; see <see cref="Placement{T}"/>.</summary>
internal static class Displacement
{
    /// <summary>Moves all bodies by a share of a step.</summary>
    public static void Apply(Linkage linkage, ReadOnlySpan<RigidMotion> from, ReadOnlySpan<double> step, double share, Span<RigidMotion> to)
    {
        foreach (int body in linkage.Order)
        {
            Carriage carriage = linkage.Carriages[body];
            ReadOnlySpan<double> u = step.Slice(carriage.FirstUnknown, carriage.Unknowns);
            to[body] = carriage.Kind switch
            {
                CarriageKind.Chassis => RigidMotion.Identity,
                CarriageKind.Driven => from[body],
                CarriageKind.Free => Moved(from[body], linkage.Centres[body], u, share),
                CarriageKind.Turning => to[carriage.Parent] * Turned(from[carriage.Parent].Inverse * from[body], carriage, u[0] * share),
                _ => to[carriage.Parent] * Slid(from[carriage.Parent].Inverse * from[body], carriage, u[0] * share),
            };
        }
    }

    /// <summary>The unknowns that take the bodies from one place to another.</summary>
    public static void Between(Linkage linkage, ReadOnlySpan<RigidMotion> was, ReadOnlySpan<RigidMotion> now, Span<double> unknowns)
    {
        for (int body = 1; body < was.Length; body++)
        {
            Carriage carriage = linkage.Carriages[body];
            int first = carriage.FirstUnknown;
            RigidMotion before = was[carriage.Parent].Inverse * was[body], after = now[carriage.Parent].Inverse * now[body];
            Rotation turn = after.Rotation * before.Rotation.Inverse;
            Vector3d cayley = new Vector3d(turn.X, turn.Y, turn.Z) * (2 * Linkage.RotationLengthMm / turn.W);
            switch (carriage.Kind)
            {
                case CarriageKind.Free:
                    Vector3d shift = after.Apply(linkage.Centres[body]) - before.Apply(linkage.Centres[body]);
                    for (int i = 0; i < 6; i++) unknowns[first + i] = i < 3 ? shift[i] : cayley[i - 3];
                    break;
                case CarriageKind.Turning:
                    unknowns[first] = Vector3d.Dot(cayley, carriage.Axis);
                    break;
                case CarriageKind.Sliding:
                    unknowns[first] = Vector3d.Dot(after.Translation - before.Translation, carriage.Axis);
                    break;
            }
        }
    }

    private static RigidMotion Moved(in RigidMotion from, Vector3d centre, ReadOnlySpan<double> u, double share)
    {
        Vector3d shift = new(u[0] * share, u[1] * share, u[2] * share);
        Vector3d cayley = new Vector3d(u[3], u[4], u[5]) * (share / (2 * Linkage.RotationLengthMm));
        Rotation turned = Rotation.FromCayley(cayley) * from.Rotation;
        return new RigidMotion(turned, from.Apply(centre) + shift - turned.Apply(centre));
    }

    // Only the turn about the line is kept, so that rounding does not add up off it.
    private static RigidMotion Turned(in RigidMotion relative, in Carriage carriage, double unknown)
    {
        Rotation r = relative.Rotation;
        double along = Vector3d.Dot(new Vector3d(r.X, r.Y, r.Z), carriage.Axis), tangent = unknown / (2 * Linkage.RotationLengthMm);
        Vector3d v = carriage.Axis * (along + (tangent * r.W));
        var turned = Rotation.Normalized(r.W - (tangent * along), v.X, v.Y, v.Z);
        return new RigidMotion(turned, carriage.Point - turned.Apply(carriage.Point));
    }

    private static RigidMotion Slid(in RigidMotion relative, in Carriage carriage, double unknown) =>
        new(Rotation.Identity, carriage.Axis * (Vector3d.Dot(relative.Translation, carriage.Axis) + unknown));
}
