using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The point that each body's small displacements turn about: the middle of the points its joints hold it by, body coordinates, mm.</summary>
/// <remarks>
/// Turning about the vehicle's origin would tie shift and turn together: the shift would have to undo what the turn moves, interval
/// bounds would count both, and a proof would depend on where somebody put zero.
/// </remarks>
internal static class BodyCentres
{
    public static ImmutableArray<Vector3d> Of(ImmutableArray<Carriage> carriages, ImmutableArray<Joint> joints)
    {
        var centres = new Vector3d[carriages.Length];
        for (int body = 1; body < carriages.Length; body++)
        {
            // A turning body's centre has to lie on the line it turns about.
            if (carriages[body].Kind is CarriageKind.Turning or CarriageKind.Sliding)
            {
                centres[body] = carriages[body].Point;
                continue;
            }

            Vector3d[] points = [.. joints.SelectMany(j => j.PointsOn(body))];
            foreach (Vector3d point in points) centres[body] += point / points.Length;
        }

        return [.. centres];
    }
}
