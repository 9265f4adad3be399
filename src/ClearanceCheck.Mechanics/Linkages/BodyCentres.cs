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
    public static ImmutableArray<Vector3d> Of(int bodies, ImmutableArray<Joint> joints)
    {
        var centres = new Vector3d[bodies];
        for (int body = 1; body < bodies; body++)
        {
            Vector3d[] points = [.. joints.SelectMany(j => Points(j, body))];
            foreach (Vector3d point in points) centres[body] += point / points.Length;
        }

        return [.. centres];
    }

    private static IEnumerable<Vector3d> Points(Joint joint, int body) => joint switch
    {
        Joint.Rod rod => [.. rod.FirstBody == body ? [rod.FirstPoint] : Array.Empty<Vector3d>(), .. rod.SecondBody == body ? [rod.SecondPoint] : Array.Empty<Vector3d>()],
        Joint.Ball ball when ball.FirstBody == body || ball.SecondBody == body => [ball.Point],
        Joint.Hinge hinge when hinge.FirstBody == body || hinge.SecondBody == body => [hinge.Point],
        Joint.Travel travel when travel.Body == body => [travel.Point],
        _ => [],
    };
}
