namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>The signed gap of two hulls the slow and obvious way, from nothing but their corners.</summary>
/// <remarks>
/// Every segment between two corners is an edge or lies inside, so is every triangle of three corners: the least distance of all pairs
/// of such features is the distance where the hulls are apart. From inside, the surface of the set of differences is nearest along a
/// face's normal, which is the product of two differences of corners: all products of all pairs are tried. Each direction gives a lower
/// bound, so the largest of all, with the direction of the nearest features among them, is the signed gap.
/// </remarks>
internal static class SlowHullGap<T>
    where T : struct, IReal<T>
{
    private static readonly T Nothing = T.Of(0), One = T.Of(1);

    public static double Of(Hull first, Hull second)
    {
        Vector3d origin = first.Corners[0];
        RealVector<T>[] a = [.. first.Corners.Select(c => RealVector<T>.Between(origin, c))];
        RealVector<T>[] b = [.. second.Corners.Select(c => RealVector<T>.Between(origin, c))];
        RealVector<T> apart = Nearest(a, b);
        // Two points at one place have no differences, and no direction is better than another.
        T most = a.All(c => !(c.LengthSquared > Nothing)) && b.All(c => !(c.LengthSquared > Nothing)) ? Nothing : T.Of(-1e300), distance = T.Root(apart.LengthSquared);
        if (distance > Nothing) most = Larger(most, Separation(a, b, apart));
        // A slant of the direction by rounding costs at most that much of a distance.
        if (most > Nothing && most > distance - T.Of(1e-7)) return (distance - T.Of(first.Radius + second.Radius)).ToDouble();
        List<RealVector<T>> axes = [.. Differences(a), .. Differences(b)];
        for (int i = 0; i < axes.Count; i++)
        {
            foreach (RealVector<T> n in Perpendiculars(axes[i])) most = Larger(most, Separation(a, b, n));
            for (int j = 0; j < i; j++) most = Larger(most, Separation(a, b, RealVector<T>.Cross(axes[i], axes[j])));
        }

        return (most - T.Of(first.Radius + second.Radius)).ToDouble();
    }

    private static RealVector<T> Nearest(RealVector<T>[] a, RealVector<T>[] b)
    {
        RealVector<T> best = a[0] - b[0];
        T least = best.LengthSquared;
        void Offer(RealVector<T> apart)
        {
            T square = apart.LengthSquared;
            if (square < least) (least, best) = (square, apart);
        }

        foreach (RealVector<T> p in a)
            foreach (RealVector<T> q in b) Offer(p - q);
        List<(RealVector<T> From, RealVector<T> Along)> ofA = Segments(a), ofB = Segments(b);
        foreach ((RealVector<T> from, RealVector<T> along) in ofA)
            foreach (RealVector<T> q in b) PointSegment(from - q, along, Offer);
        foreach ((RealVector<T> from, RealVector<T> along) in ofB)
            foreach (RealVector<T> p in a) PointSegment(p - from, along * T.Of(-1), Offer);
        foreach ((RealVector<T> p, RealVector<T> u) in ofA)
            foreach ((RealVector<T> q, RealVector<T> v) in ofB) Lines(p - q, u, v, Offer);
        foreach ((RealVector<T> c, RealVector<T> e, RealVector<T> f) in Triangles(b))
            foreach (RealVector<T> p in a) Foot(p - c, e, f, Offer);
        foreach ((RealVector<T> c, RealVector<T> e, RealVector<T> f) in Triangles(a))
            foreach (RealVector<T> q in b) Foot(q - c, e, f, n => Offer(n * T.Of(-1)));
        return best;
    }

    // The point of r + u s, s in 0..1, nearest to the origin, where it is not an end.
    private static void PointSegment(RealVector<T> r, RealVector<T> u, Action<RealVector<T>> offer)
    {
        T square = u.LengthSquared;
        if (!(square > Nothing)) return;
        T s = Nothing - (RealVector<T>.Dot(r, u) / square);
        if (s > Nothing && s < One) offer(r + (u * s));
    }

    private static void Lines(RealVector<T> r, RealVector<T> u, RealVector<T> v, Action<RealVector<T>> offer)
    {
        RealVector<T> n = RealVector<T>.Cross(u, v);
        T nn = n.LengthSquared;
        if (!(nn > Nothing)) return;
        T s = RealVector<T>.Dot(RealVector<T>.Cross(v, r), n) / nn, t = RealVector<T>.Dot(RealVector<T>.Cross(u, r), n) / nn;
        if (s > Nothing && s < One && t > Nothing && t < One) offer(r + (u * s) - (v * t));
    }

    private static void Foot(RealVector<T> w, RealVector<T> e, RealVector<T> f, Action<RealVector<T>> offer)
    {
        RealVector<T> n = RealVector<T>.Cross(e, f);
        T nn = n.LengthSquared;
        if (!(nn > Nothing)) return;
        T s = RealVector<T>.Dot(RealVector<T>.Cross(w, f), n) / nn, t = RealVector<T>.Dot(RealVector<T>.Cross(e, w), n) / nn;
        if (s > Nothing && t > Nothing && s + t < One) offer(w - (e * s) - (f * t));
    }

    // The larger of both senses of the direction.
    private static T Separation(RealVector<T>[] a, RealVector<T>[] b, RealVector<T> n)
    {
        T square = n.LengthSquared;
        if (!(square > Nothing)) return T.Of(-1e300);
        (T firstLow, T firstHigh) = Extent(a, n);
        (T secondLow, T secondHigh) = Extent(b, n);
        return Larger(firstLow - secondHigh, secondLow - firstHigh) / T.Root(square);
    }

    private static (T Low, T High) Extent(RealVector<T>[] corners, RealVector<T> n)
    {
        T low = RealVector<T>.Dot(corners[0], n), high = low;
        for (int i = 1; i < corners.Length; i++)
        {
            T along = RealVector<T>.Dot(corners[i], n);
            if (along < low) low = along;
            if (along > high) high = along;
        }

        return (low, high);
    }

    private static IEnumerable<RealVector<T>> Perpendiculars(RealVector<T> d)
    {
        yield return RealVector<T>.Cross(d, new(One, Nothing, Nothing));
        yield return RealVector<T>.Cross(d, new(Nothing, One, Nothing));
        yield return RealVector<T>.Cross(d, new(Nothing, Nothing, One));
    }

    private static IEnumerable<RealVector<T>> Differences(RealVector<T>[] corners) => Segments(corners).Select(s => s.Along);

    private static List<(RealVector<T> From, RealVector<T> Along)> Segments(RealVector<T>[] corners)
    {
        var all = new List<(RealVector<T>, RealVector<T>)>();
        for (int i = 0; i < corners.Length; i++)
            for (int j = i + 1; j < corners.Length; j++) all.Add((corners[i], corners[j] - corners[i]));
        return all;
    }

    private static List<(RealVector<T> Corner, RealVector<T> E, RealVector<T> F)> Triangles(RealVector<T>[] corners)
    {
        var all = new List<(RealVector<T>, RealVector<T>, RealVector<T>)>();
        for (int i = 0; i < corners.Length; i++)
            for (int j = i + 1; j < corners.Length; j++)
                for (int k = j + 1; k < corners.Length; k++) all.Add((corners[i], corners[j] - corners[i], corners[k] - corners[i]));
        return all;
    }

    private static T Larger(T a, T b) => a > b ? a : b;
}
