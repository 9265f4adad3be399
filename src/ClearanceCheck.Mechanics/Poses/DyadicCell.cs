namespace ClearanceCheck.Mechanics.Poses;

/// <summary>A cell of the pose box between dyadic poses, halved one coordinate at a time.</summary>
public readonly record struct DyadicCell(DyadicPose Low, DyadicPose Size)
{
    public static DyadicCell Whole(int dimensions)
    {
        DyadicPose size = default;
        for (int d = 0; d < dimensions; d++) size = size.With(d, DyadicPose.Denominator);
        return new DyadicCell(default, size);
    }

    /// <summary>Corner number <paramref name="corner"/>: bit d set means the high end of coordinate d.</summary>
    public DyadicPose Corner(int corner, int dimensions)
    {
        DyadicPose pose = Low;
        for (int d = 0; d < dimensions; d++)
            if ((corner >> d & 1) != 0) pose = pose.With(d, Low[d] + Size[d]);
        return pose;
    }

    public DyadicPose Center(int dimensions)
    {
        DyadicPose pose = Low;
        for (int d = 0; d < dimensions; d++) pose = pose.With(d, Low[d] + (Size[d] / 2));
        return pose;
    }

    public bool CanHalve(int dimension) => Size[dimension] >= 2;

    public (DyadicCell Low, DyadicCell High) Halves(int dimension)
    {
        int half = Size[dimension] / 2;
        DyadicPose size = Size.With(dimension, half);
        return (new DyadicCell(Low, size), new DyadicCell(Low.With(dimension, Low[dimension] + half), size));
    }

    public double Width(int dimension, PoseBox box) => box.Range(dimension) * (Size[dimension] / (double)DyadicPose.Denominator);
}
