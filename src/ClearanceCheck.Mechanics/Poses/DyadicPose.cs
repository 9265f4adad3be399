using System.Numerics;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>A pose at whole fractions k / 2^24 of each coordinate's range: the corners and centres that cells share.</summary>
public readonly record struct DyadicPose(int A, int B, int C, int D)
{
    public const int Bits = 24;
    public const int Denominator = 1 << Bits;

    public int this[int dimension] => dimension switch { 0 => A, 1 => B, 2 => C, _ => D };

    public static DyadicPose Center(int dimensions)
    {
        DyadicPose pose = default;
        for (int d = 0; d < dimensions; d++) pose = pose.With(d, Denominator / 2);
        return pose;
    }

    public DyadicPose With(int dimension, int numerator) => dimension switch
    {
        0 => this with { A = numerator },
        1 => this with { B = numerator },
        2 => this with { C = numerator },
        _ => this with { D = numerator },
    };

    /// <summary>The coarser pose that this one is solved from; false for the centre of the box, which starts from the measured state.</summary>
    /// <remarks>The finest coordinate steps to the middle of the interval it halves; ends of the range step to its centre.</remarks>
    public bool TryParent(int dimensions, out DyadicPose parent)
    {
        int finest = -1, finestLevel = 1;
        for (int d = 0; d < dimensions; d++)
        {
            int level = Level(this[d]);
            if (level > finestLevel) (finest, finestLevel) = (d, level);
        }

        parent = this;
        if (finest < 0) return TryEndToCentre(dimensions, out parent);
        int step = Denominator >> finestLevel, below = this[finest] - step, above = this[finest] + step;
        parent = With(finest, Level(below) == finestLevel - 1 ? below : above);
        return true;
    }

    private bool TryEndToCentre(int dimensions, out DyadicPose parent)
    {
        for (int d = 0; d < dimensions; d++)
        {
            if (this[d] == Denominator / 2) continue;
            parent = With(d, Denominator / 2);
            return true;
        }

        parent = this;
        return false;
    }

    // 0 for the ends, 1 for the centre, 2 for the quarters ...
    private static int Level(int numerator) =>
        numerator is 0 or Denominator ? 0 : Bits - BitOperations.TrailingZeroCount(numerator);
}
