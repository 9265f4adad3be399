using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Finds links that hang on two points only, whose spin about the line through them nothing decides.</summary>
internal static class SpinHolds
{
    public static IEnumerable<Joint> For(ImmutableArray<string> bodies, ImmutableArray<Joint> joints)
    {
        for (int body = 1; body < bodies.Length; body++)
        {
            Vector3d[]? ends = Ends(body, joints);
            if (ends is [var a, var b]) yield return new Joint.SpinHold($"spin of {bodies[body]}", body, b - a);
        }
    }

    // The distinct points a body hangs on, or null when a hinge or a setting holds it as well.
    private static Vector3d[]? Ends(int body, ImmutableArray<Joint> joints)
    {
        var points = new List<Vector3d>();
        foreach (Joint joint in joints)
        {
            switch (joint)
            {
                case Joint.Rod rod:
                    if (rod.FirstBody == body) points.Add(rod.FirstPoint);
                    if (rod.SecondBody == body) points.Add(rod.SecondPoint);
                    break;
                case Joint.Ball ball when ball.FirstBody == body || ball.SecondBody == body:
                    points.Add(ball.Point);
                    break;
                case Joint.Hinge hinge when hinge.FirstBody == body || hinge.SecondBody == body:
                    return null;
                case Joint.Travel travel when travel.Body == body:
                    points.Add(travel.Point);
                    break;
            }
        }

        return [.. points.Distinct()];
    }
}
