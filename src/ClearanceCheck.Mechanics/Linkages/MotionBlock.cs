using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What is known of the motion over one block of the pose box: an enclosure, or derivatives read at its nodes.</summary>
internal sealed class MotionBlock
{
    /// <summary>What read second derivatives are multiplied by: twice for what lies between the nodes, twice for a danger.</summary>
    public const double ReadFactor = 4;

    private readonly MotionJet<Interval>[][]? enclosed;
    private readonly MotionJet<Real>[][][]? read;

    public MotionBlock(MotionJet<Interval>[][] enclosed) => (this.enclosed, Basis) = (enclosed, CurvatureBasis.Enclosed);

    /// <param name="read">For each node, each coordinate, each body.</param>
    public MotionBlock(MotionJet<Real>[][][] read) => (this.read, Basis) = (read, CurvatureBasis.Read);

    private MotionBlock() => Basis = CurvatureBasis.Unknown;

    public static MotionBlock Unknown { get; } = new();

    public CurvatureBasis Basis { get; }

    public Curvature Bound(int coordinate, int frameBody, int body, ReadOnlySpan<Vector3d> anchors)
    {
        bool started = false;
        Curvature hull = Curvature.None;
        foreach (Vector3d anchor in anchors)
        {
            Curvature own = enclosed is not null ? Enclosed(enclosed[coordinate], frameBody, body, anchor) : Read(coordinate, frameBody, body, anchor);
            hull = started ? Curvature.Hull(hull, own) : own;
            started = true;
        }

        return hull;
    }

    private static Curvature Enclosed(MotionJet<Interval>[] jets, int frameBody, int body, Vector3d anchor)
    {
        Vector3<Taylor2<Interval>> path = frameBody == 0 ? jets[body].Apply(anchor) : jets[body].ApplyInFrame(jets[frameBody], anchor);
        Interval x = path.X.Second, y = path.Y.Second, z = path.Z.Second;
        double square = (x.Magnitude * x.Magnitude) + (y.Magnitude * y.Magnitude) + (z.Magnitude * z.Magnitude);
        return new Curvature(x.Low, x.High, y.Low, y.High, z.Low, z.High, Math.Sqrt(square) * (1 + 1e-14));
    }

    private Curvature Read(int coordinate, int frameBody, int body, Vector3d anchor)
    {
        double largest = 0;
        foreach (MotionJet<Real>[][] node in read!)
        {
            MotionJet<Real>[] jets = node[coordinate];
            Vector3<Taylor2<Real>> path = frameBody == 0 ? jets[body].Apply(anchor) : jets[body].ApplyInFrame(jets[frameBody], anchor);
            largest = Math.Max(largest, new Vector3d(path.X.Second.Value, path.Y.Second.Value, path.Z.Second.Value).Length);
        }

        return Curvature.Ball(ReadFactor * largest);
    }
}
