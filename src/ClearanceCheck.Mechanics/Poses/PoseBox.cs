using System.Collections.Immutable;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>The box of all settings: one range a coordinate, travel in mm or angles in rad.</summary>
public sealed class PoseBox
{
    /// <summary>More coordinates than this would need a pose of another size.</summary>
    public const int MaximumDimensions = 4;

    /// <exception cref="ArgumentException">More than four coordinates, or a range that is empty or not finite.</exception>
    public PoseBox(IEnumerable<PoseCoordinate> coordinates)
    {
        Coordinates = [.. coordinates];
        if (Coordinates.Length > MaximumDimensions) throw new ArgumentException("A pose box has at most four coordinates.", nameof(coordinates));
        foreach (PoseCoordinate c in Coordinates)
            if (!(c.High > c.Low) || !double.IsFinite(c.High - c.Low)) throw new ArgumentException($"The range of {c.Name} is empty.", nameof(coordinates));
    }

    public ImmutableArray<PoseCoordinate> Coordinates { get; }

    public int Dimensions => Coordinates.Length;

    public double Range(int dimension) => Coordinates[dimension].High - Coordinates[dimension].Low;

    /// <summary>The value of a coordinate at a dyadic numerator.</summary>
    public double ValueAt(int dimension, int numerator)
    {
        PoseCoordinate c = Coordinates[dimension];
        return numerator == DyadicPose.Denominator ? c.High : c.Low + ((c.High - c.Low) * (numerator / (double)DyadicPose.Denominator));
    }

    public void Values(in DyadicPose pose, Span<double> values)
    {
        for (int d = 0; d < Dimensions; d++) values[d] = ValueAt(d, pose[d]);
    }
}

