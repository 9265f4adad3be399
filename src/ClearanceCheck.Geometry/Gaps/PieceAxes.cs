using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Gaps;

/// <summary>The directions of a piece's edges and the normals of its faces, each once or more, not of unit length.</summary>
internal static class PieceAxes
{
    /// <summary>A leaf of a solid of revolution has its corners at three stations around the axis.</summary>
    private const int Stations = 3;

    // A product of two edges shorter than this share of both is rounding.
    private const double ParallelShareSquared = 1e-24;

    // A longer one than this is square to both as it stands.
    private const double SharpShareSquared = 1e-4;

    public static void Of(in Piece piece, Span<Vector3d> edges, out int edgeCount, Span<Vector3d> faces, out int faceCount)
    {
        (edgeCount, faceCount) = (0, 0);
        ReadOnlySpan<Vector3d> c = piece.Corners;
        switch (piece.Kind)
        {
            case PieceKind.Box:
                (edges[0], edges[1], edges[2], edgeCount) = (c[1] - c[0], c[2] - c[0], c[4] - c[0], 3);
                Face(edges[0], edges[1], faces, ref faceCount);
                Face(edges[1], edges[2], faces, ref faceCount);
                Face(edges[2], edges[0], faces, ref faceCount);
                break;
            case PieceKind.Stave when c.Length % Stations == 0:
                Stave(c, edges, ref edgeCount, faces, ref faceCount);
                break;
            default:
                for (int i = 1; i < Math.Min(c.Length, 3); i++) edges[edgeCount++] = c[i] - c[0];
                if (c.Length >= 3)
                {
                    edges[edgeCount++] = c[2] - c[1];
                    Face(edges[0], edges[1], faces, ref faceCount);
                }

                break;
        }
    }

    // Edges of the section at each station, and from station to station, which are parallel for all corners of the section. Faces: square
    // to the axis, the two ends, and for each edge of the section the two outer and the inner one.
    private static void Stave(ReadOnlySpan<Vector3d> c, Span<Vector3d> edges, ref int edgeCount, Span<Vector3d> faces, ref int faceCount)
    {
        int size = c.Length / Stations, sides = size > 2 ? size : size - 1, widest = Widest(c, size);
        Vector3d along = c[size + widest] - c[widest], back = c[(2 * size) + widest] - c[size + widest], chord = c[(2 * size) + widest] - c[widest];
        (edges[0], edges[1], edges[2], edgeCount) = (along, back, chord, 3);
        Face(along, back, faces, ref faceCount);
        for (int i = 0; i < sides; i++)
        {
            int next = (i + 1) % size;
            Vector3d low = c[next] - c[i], middle = c[size + next] - c[size + i], high = c[(2 * size) + next] - c[(2 * size) + i];
            (edges[edgeCount], edges[edgeCount + 1], edges[edgeCount + 2]) = (low, middle, high);
            edgeCount += 3;
            Face(low, along, faces, ref faceCount);
            Face(high, back, faces, ref faceCount);
            Face(low, chord, faces, ref faceCount);
        }

        if (size < 3) return;
        Face(c[1] - c[0], c[2] - c[0], faces, ref faceCount);
        Face(c[(2 * size) + 1] - c[2 * size], c[(2 * size) + 2] - c[2 * size], faces, ref faceCount);
    }

    // The corner of the section that is farthest from the axis: its way around is longest.
    private static int Widest(ReadOnlySpan<Vector3d> c, int size)
    {
        int widest = 0;
        for (int i = 1; i < size; i++)
            if ((c[(2 * size) + i] - c[i]).LengthSquared > (c[(2 * size) + widest] - c[widest]).LengthSquared) widest = i;
        return widest;
    }

    private static void Face(Vector3d a, Vector3d b, Span<Vector3d> faces, ref int count)
    {
        Vector3d normal = Across(a, b);
        if (normal != Vector3d.Zero) faces[count++] = normal;
    }

    /// <summary>A vector square to both; zero where they are parallel.</summary>
    /// <remarks>
    /// Rounding turns the product of two nearly parallel vectors by 1e-16 over the sine between them. Around the vectors that does no
    /// harm; what it adds along them counts over their whole length and is taken out again.
    /// </remarks>
    public static Vector3d Across(Vector3d a, Vector3d b)
    {
        Vector3d cross = Vector3d.Cross(a, b);
        double square = cross.LengthSquared, whole = a.LengthSquared * b.LengthSquared;
        if (!(square > ParallelShareSquared * whole)) return Vector3d.Zero;
        return square > SharpShareSquared * whole ? cross : Square(cross, a.LengthSquared > b.LengthSquared ? a : b);
    }

    /// <summary>The part of a vector square to another.</summary>
    public static Vector3d Square(Vector3d v, Vector3d other)
    {
        double length = other.LengthSquared;
        return length > 0 ? v - (other * (Vector3d.Dot(v, other) / length)) : v;
    }
}
