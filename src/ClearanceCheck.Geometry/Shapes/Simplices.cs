using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>Shapes made of simplices.</summary>
public static class Simplices
{
    /// <summary>A plate from the outline around the middle of its thickness; its edges are round.</summary>
    /// <param name="outline">Three or more corners around a simple polygon, either way, about flat.</param>
    /// <param name="thicknessMm">Its thickness.</param>
    /// <returns>Null for an outline that crosses itself or has no area.</returns>
    public static SimplexTree? Plate(ReadOnlySpan<Vector3d> outline, double thicknessMm)
    {
        if (outline.Length < 3) return null;
        Vector3d normal = Normal(outline), unit = normal.NormalizedOr(Vector3d.Zero);
        if (unit == Vector3d.Zero) return null;
        Vector3d right = unit.AnyPerpendicular(), up = Vector3d.Cross(unit, right);
        var flat = new (double X, double Y)[outline.Length];
        for (int i = 0; i < flat.Length; i++) flat[i] = (Vector3d.Dot(outline[i] - outline[0], right), Vector3d.Dot(outline[i] - outline[0], up));
        var left = new List<int>(Enumerable.Range(0, flat.Length));
        var simplices = ImmutableArray.CreateBuilder<Simplex>(flat.Length - 2);
        while (left.Count > 3)
        {
            int ear = FindEar(left, flat);
            if (ear < 0) return null;
            simplices.Add(Triangle(left, ear, thicknessMm / 2));
            left.RemoveAt(ear);
        }

        if (!(Turn(flat[left[0]], flat[left[1]], flat[left[2]]) > 0)) return null;
        simplices.Add(Triangle(left, 1, thicknessMm / 2));
        return new SimplexTree([.. outline], simplices.MoveToImmutable());
    }

    // Twice the outline's area as a vector (Newell); the outline turns left about it.
    private static Vector3d Normal(ReadOnlySpan<Vector3d> outline)
    {
        Vector3d sum = Vector3d.Zero;
        for (int i = 0; i < outline.Length; i++) sum += Vector3d.Cross(outline[i] - outline[0], outline[(i + 1) % outline.Length] - outline[0]);
        return sum;
    }

    private static Simplex Triangle(List<int> left, int ear, double radiusMm) =>
        new(left[(ear + left.Count - 1) % left.Count], left[ear], left[(ear + 1) % left.Count], radiusMm);

    // A corner that turns left and whose triangle holds no other corner.
    private static int FindEar(List<int> left, (double X, double Y)[] flat)
    {
        for (int i = 0; i < left.Count; i++)
        {
            (double X, double Y) a = flat[left[(i + left.Count - 1) % left.Count]], b = flat[left[i]], c = flat[left[(i + 1) % left.Count]];
            if (!(Turn(a, b, c) > 0)) continue;
            bool isEar = true;
            for (int k = 2; k < left.Count - 1 && isEar; k++)
            {
                (double X, double Y) p = flat[left[(i + k) % left.Count]];
                isEar = Turn(a, b, p) < 0 || Turn(b, c, p) < 0 || Turn(c, a, p) < 0;
            }

            if (isEar) return i;
        }

        return -1;
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
