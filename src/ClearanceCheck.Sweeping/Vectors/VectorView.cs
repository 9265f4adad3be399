using ClearanceCheck.Geometry;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>A moving vector as one search sees it: in the frame of the search, in one pose or over one cell.</summary>
/// <remarks>
/// It is linear in the places of its points, so over a cell it is the interpolation of its corner values but for a remainder of at most
/// the sum of |factor| M w^2 / 8 over its moving points, in length or along any direction (see <see cref="CellGeometry"/>).
/// </remarks>
internal sealed class VectorView
{
    private readonly VectorTerm[] moving;
    private readonly int firstTrack;
    private readonly Vector3d still;
    private CellGeometry? cell;

    /// <param name="vector">The vector.</param>
    /// <param name="frameBody">The body in whose frame the search runs.</param>
    /// <param name="firstTrack">How many tracks of the search come before those of this vector.</param>
    public VectorView(SweptVector vector, int frameBody, int firstTrack)
    {
        moving = [.. vector.Terms.Where(t => t.Body != frameBody)];
        this.firstTrack = firstTrack;
        foreach (VectorTerm term in vector.Terms.Where(t => t.Body == frameBody)) still += term.Factor * term.Point;
        Tracks = [.. moving.Select(t => new SweptTrack(t.Body, [t.Point]))];
    }

    public IReadOnlyList<SweptTrack> Tracks { get; }

    public Vector3d Value(ReadOnlySpan<RigidMotion> tracks)
    {
        Vector3d sum = still;
        for (int i = 0; i < moving.Length; i++) sum += moving[i].Factor * tracks[firstTrack + i].Apply(moving[i].Point);
        return sum;
    }

    /// <summary>Takes the cell that the following questions are about.</summary>
    public void Load(CellGeometry cell) => this.cell = cell;

    public Vector3d AtCentre()
    {
        Vector3d sum = still;
        for (int i = 0; i < moving.Length; i++) sum += moving[i].Factor * Track(i).Centre.Apply(moving[i].Point);
        return sum;
    }

    public Vector3d AtCorner(int corner)
    {
        Vector3d sum = still;
        for (int i = 0; i < moving.Length; i++) sum += moving[i].Factor * Track(i).Corners[corner].Apply(moving[i].Point);
        return sum;
    }

    /// <summary>The most by which the vector can lie beside the interpolation of its corner values in one coordinate, in its own unit.</summary>
    public double Remainder(int coordinate)
    {
        double sum = 0;
        for (int i = 0; i < moving.Length; i++) sum += Math.Abs(moving[i].Factor) * Track(i).Curvatures[coordinate].Length;
        return sum * Share(coordinate);
    }

    /// <summary>The most by which n.vector can lie below the interpolation of its corner values in one coordinate.</summary>
    public double RemainderBelow(int coordinate, Vector3d n)
    {
        double sum = 0;
        for (int i = 0; i < moving.Length; i++)
            // Below its chord lies what curves upwards: what the other way has a second derivative below zero.
            sum += Math.Abs(moving[i].Factor) * Track(i).Curvatures[coordinate].Along(moving[i].Factor < 0 ? n : -n);
        return sum * Share(coordinate);
    }

    /// <summary>No pose of the cell has a smaller n.vector.</summary>
    public double Least(Vector3d n)
    {
        double least = double.PositiveInfinity;
        for (int c = 0; c < cell!.CornerCount; c++) least = Math.Min(least, Vector3d.Dot(n, AtCorner(c)));
        for (int k = 0; k < cell.Dimensions; k++) least -= RemainderBelow(k, n);
        return least - CellGeometry.SlackMm;
    }

    private TrackMotion Track(int i) => cell!.Tracks[firstTrack + i];

    private double Share(int coordinate) => cell!.Widths[coordinate] * cell.Widths[coordinate] / 8;
}
