using System.Runtime.InteropServices;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Ply;

/// <summary>Reads the tables of a PLY body: points, faces as fans of triangles; others are walked through.</summary>
/// <remarks>
/// The triangles of a fan around one corner cover the whole of a flat polygon, also of one that is not convex: their signed areas add
/// up to it, so none of its points is in no triangle. They may cover more; a gap is then stated too small, never too large.
/// </remarks>
internal sealed class PlyBody(ScanFile file, PlyValues values)
{
    private readonly List<int> corners = [];
    private int leastCorner;
    private int greatestCorner = -1;

    /// <summary>The points in file order.</summary>
    public Vector3d[] Points { get; private set; } = [];

    /// <summary>Three numbers of points for each triangle.</summary>
    public ReadOnlySpan<int> Corners => CollectionsMarshal.AsSpan(corners);

    /// <summary>Faces of more than three corners.</summary>
    public int Fanned { get; private set; }

    /// <summary>Faces of fewer than three corners, which are left out.</summary>
    public int TooFew { get; private set; }

    /// <summary>The column of a face's corners, or -1.</summary>
    public static int CornerColumn(PlyElement faces) => faces.Column("vertex_indices", "vertex_index");

    /// <summary>Reads everything; false, and said, where it can't be used.</summary>
    public bool Read(PlyHeader header)
    {
        foreach (PlyElement element in header.Elements)
        {
            bool read = element.Name switch
            {
                PlyElement.Vertices => ReadPoints(element),
                PlyElement.Faces => ReadFaces(element),
                _ => Skip(element),
            };
            if (!read) return false;
        }

        if (!values.IsAtEnd())
        {
            ScanMessages.PlyGoesOn(file);
            return false;
        }

        return PointsExist();
    }

    private bool ReadPoints(PlyElement vertices)
    {
        int x = vertices.Column("x"), y = vertices.Column("y"), z = vertices.Column("z");
        Points = new Vector3d[vertices.Count];
        double[] row = new double[vertices.Properties.Count];
        for (int i = 0; i < Points.Length; i++)
        {
            for (int column = 0; column < row.Length; column++)
            {
                bool wanted = column == x || column == y || column == z;
                if (wanted ? !values.TryNext(vertices.Properties[column].Type, out row[column]) : !Skip(vertices.Properties[column])) return false;
            }

            Points[i] = new Vector3d(row[x], row[y], row[z]);
            if (Points[i].IsFinite) continue;
            ScanMessages.NotFinite(file, $"point {i}");
            return false;
        }

        return true;
    }

    private bool ReadFaces(PlyElement faces)
    {
        int wanted = CornerColumn(faces);
        for (long i = 0; i < faces.Count; i++)
            for (int column = 0; column < faces.Properties.Count; column++)
                if (column == wanted ? !ReadFace(faces.Properties[column]) : !Skip(faces.Properties[column])) return false;
        return true;
    }

    private bool ReadFace(PlyProperty list)
    {
        if (!TryLength(list, out long length)) return false;
        if (length > 3) Fanned++;
        if (length < 3) TooFew++;
        int first = 0, last = 0;
        for (long k = 0; k < length; k++)
        {
            if (!TryCorner(list.Type, out int corner)) return false;
            if (k == 0) first = corner;
            if (k >= 2 && !Add(first, last, corner)) return false;
            last = corner;
        }

        return true;
    }

    private bool Add(int a, int b, int c)
    {
        if (corners.Count / 3 == ScanLimits.MostTriangles)
        {
            ScanMessages.TooManyTriangles(file, null);
            return false;
        }

        corners.AddRange([a, b, c]);
        leastCorner = Math.Min(leastCorner, Math.Min(a, Math.Min(b, c)));
        greatestCorner = Math.Max(greatestCorner, Math.Max(a, Math.Max(b, c)));
        return true;
    }

    private bool TryCorner(PlyType type, out int corner)
    {
        corner = 0;
        if (!values.TryNext(type, out double value)) return false;
        if (value >= int.MinValue && value <= int.MaxValue && value == Math.Floor(value))
        {
            corner = (int)value;
            return true;
        }

        ScanMessages.PlyIndex(file, value);
        return false;
    }

    private bool TryLength(PlyProperty list, out long length)
    {
        length = 0;
        if (!values.TryNext(list.CountType!.Value, out double value)) return false;
        if (value >= 0 && value <= values.Left && value == Math.Floor(value))
        {
            length = (long)value;
            return true;
        }

        ScanMessages.PlyListLength(file, list.Name, value);
        return false;
    }

    private bool Skip(PlyElement element)
    {
        for (long i = 0; i < element.Count; i++)
            foreach (PlyProperty property in element.Properties)
                if (!Skip(property)) return false;
        return true;
    }

    private bool Skip(PlyProperty property)
    {
        if (!property.IsList) return values.TrySkip(property.Type);
        if (!TryLength(property, out long length)) return false;
        for (long k = 0; k < length; k++)
            if (!values.TrySkip(property.Type)) return false;
        return true;
    }

    // Faces may stand before the points, so numbers are looked at when both are known.
    private bool PointsExist()
    {
        if (leastCorner >= 0 && greatestCorner < Points.Length) return true;
        int at = corners.FindIndex(corner => corner < 0 || corner >= Points.Length);
        ScanMessages.NoSuchPoint(file, $"triangle {(at / 3) + 1}", corners[at], Points.Length);
        return false;
    }
}
