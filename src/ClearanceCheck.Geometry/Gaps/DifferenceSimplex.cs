namespace ClearanceCheck.Geometry.Gaps;

/// <summary>Up to four differences of corners of two hulls, and the point of their hull nearest to the origin.</summary>
/// <param name="corners">Room for eight: four corners of the first, then four of the second.</param>
/// <param name="weights">Room for eight: weights of the four, and of a face that is tried.</param>
internal ref struct DifferenceSimplex(Span<Vector3d> corners, Span<double> weights)
{
    // A face with less than this share of the area that its edges could span is left to its own edges, squared. A face's weights give a
    // point of the hull however poor they are, so it may be narrow.
    private const double NarrowShare = 1e-26;

    // Four corners with less than this share of the volume that their edges could span surround nothing, squared.
    private const double FlatShare = 1e-14;

    private readonly Span<Vector3d> corners = corners;
    private readonly Span<double> weights = weights;
    private int count;

    public Vector3d Nearest { get; private set; }

    /// <summary>True when the four corners surround the origin.</summary>
    public bool HoldsOrigin { get; private set; }

    public readonly (Vector3d OnFirst, Vector3d OnSecond) Points
    {
        get
        {
            Vector3d onFirst = Vector3d.Zero, onSecond = Vector3d.Zero;
            for (int i = 0; i < count; i++)
            {
                onFirst += corners[i] * weights[i];
                onSecond += corners[4 + i] * weights[i];
            }

            return (onFirst, onSecond);
        }
    }

    public void Start(Vector3d a, Vector3d b)
    {
        (corners[0], corners[4], weights[0], count) = (a, b, 1, 1);
        Nearest = a - b;
    }

    /// <summary>Adds a pair of corners and finds the nearest point anew; false when the pair is known already.</summary>
    public bool TryAdd(Vector3d a, Vector3d b)
    {
        for (int i = 0; i < count; i++)
            if (corners[i] == a && corners[4 + i] == b) return false;
        (corners[count], corners[4 + count]) = (a, b);
        count++;
        Reduce();
        return true;
    }

    // The best face among those that hold the newest corner; the others were looked at before.
    private void Reduce()
    {
        Span<double> best = stackalloc double[4], tried = weights[4..];
        double least = double.PositiveInfinity;
        int bestMask = 0;
        Vector3d nearest = Nearest;
        for (int rest = 0; rest < 1 << (count - 1); rest++)
        {
            int mask = rest | (1 << (count - 1));
            tried.Clear();
            if (!TryFace(mask, tried)) continue;
            Vector3d point = Vector3d.Zero;
            for (int i = 0; i < count; i++) point += (corners[i] - corners[4 + i]) * tried[i];
            double square = mask == 15 ? 0 : point.LengthSquared;
            if (!(square < least)) continue;
            (least, bestMask, nearest) = (square, mask, point);
            tried.CopyTo(best);
        }

        HoldsOrigin = bestMask == 15;
        Nearest = HoldsOrigin ? Vector3d.Zero : nearest;
        int kept = 0;
        for (int i = 0; i < count; i++)
        {
            if ((bestMask >> i & 1) == 0) continue;
            (corners[kept], corners[4 + kept], weights[kept]) = (corners[i], corners[4 + i], best[i]);
            kept++;
        }

        count = kept;
    }

    // Weights of the origin's foot on a face, if it falls inside.
    private readonly bool TryFace(int mask, Span<double> into)
    {
        Span<int> index = stackalloc int[4];
        int size = 0;
        for (int i = 0; i < count; i++)
            if ((mask >> i & 1) != 0) index[size++] = i;
        Vector3d a = Difference(index[0]);
        Vector3d u = size > 1 ? Difference(index[1]) - a : default, v = size > 2 ? Difference(index[2]) - a : default;
        double s = 0, t = 0, r = 0;
        switch (size)
        {
            case 2:
                double length = u.LengthSquared;
                if (!(length > 0)) return false;
                s = -Vector3d.Dot(a, u) / length;
                break;
            case 3:
                Vector3d normal = Vector3d.Cross(u, v);
                double area = normal.LengthSquared;
                if (!(area > NarrowShare * u.LengthSquared * v.LengthSquared)) return false;
                s = -Vector3d.Dot(Vector3d.Cross(a, v), normal) / area;
                t = -Vector3d.Dot(Vector3d.Cross(u, a), normal) / area;
                break;
            case 4:
                Vector3d w = Difference(index[3]) - a, vw = Vector3d.Cross(v, w);
                double volume = Vector3d.Dot(u, vw);
                if (!(volume * volume > FlatShare * u.LengthSquared * v.LengthSquared * w.LengthSquared)) return false;
                s = -Vector3d.Dot(a, vw) / volume;
                t = -Vector3d.Dot(u, Vector3d.Cross(a, w)) / volume;
                r = -Vector3d.Dot(u, Vector3d.Cross(v, a)) / volume;
                break;
        }

        if (s < 0 || t < 0 || r < 0 || s + t + r > 1) return false;
        into[index[0]] = 1 - s - t - r;
        if (size > 1) into[index[1]] = s;
        if (size > 2) into[index[2]] = t;
        if (size > 3) into[index[3]] = r;
        return true;
    }

    private readonly Vector3d Difference(int i) => corners[i] - corners[4 + i];
}
