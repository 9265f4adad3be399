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

    // The distinct points a body hangs on, or null when something holds it otherwise as well.
    private static Vector3d[]? Ends(int body, ImmutableArray<Joint> joints)
    {
        var points = new List<Vector3d>();
        foreach (Joint joint in joints)
        {
            if (joint is (Joint.Hinge or Joint.Slide or Joint.Bushing or Joint.Leaf or Joint.Turn or Joint.Torque) && joint.Bodies.Contains(body)) return null;
            points.AddRange(joint.PointsOn(body));
        }

        return [.. points.Distinct()];
    }
}
