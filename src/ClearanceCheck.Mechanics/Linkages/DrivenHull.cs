using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The hull of enclosed motions over several parts.</summary>
internal static class DrivenHull
{
    /// <param name="parts">For each part, for each coordinate, for each body; at least one part.</param>
    public static MotionJet<Interval>[][] Of(IReadOnlyList<MotionJet<Interval>[][]> parts)
    {
        MotionJet<Interval>[][] hull = [.. parts[0].Select(jets => jets.ToArray())];
        foreach (MotionJet<Interval>[][] part in parts.Skip(1))
            for (int k = 0; k < hull.Length; k++)
                for (int body = 0; body < hull[k].Length; body++) hull[k][body] = Of(hull[k][body], part[k][body]);
        return hull;
    }

    private static MotionJet<Interval> Of(in MotionJet<Interval> a, in MotionJet<Interval> b) =>
        new(a.Centre, Of(a.Place, b.Place), Of(a.ColumnX, b.ColumnX), Of(a.ColumnY, b.ColumnY), Of(a.ColumnZ, b.ColumnZ));

    private static Vector3<Taylor2<Interval>> Of(in Vector3<Taylor2<Interval>> a, in Vector3<Taylor2<Interval>> b) => new(Of(a.X, b.X), Of(a.Y, b.Y), Of(a.Z, b.Z));

    private static Taylor2<Interval> Of(in Taylor2<Interval> a, in Taylor2<Interval> b) =>
        new(Interval.Hull(a.Value, b.Value), Interval.Hull(a.First, b.First), Interval.Hull(a.Second, b.Second));
}
