using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>Random cells: anywhere, or wide in one coordinate about the bottom of a function there, where curvature decides.</summary>
internal static class CellAim
{
    public static DyadicCell Anywhere(SplitMix64 random, int d)
    {
        DyadicPose low = default, size = default;
        int finest = random.Below(7);
        for (int k = 0; k < d; k++)
        {
            int level = random.Below(finest + 1);
            size = size.With(k, DyadicPose.Denominator >> level);
            low = low.With(k, (DyadicPose.Denominator >> level) * random.Below(1 << level));
        }

        return new DyadicCell(low, size);
    }

    /// <summary>Null when no bottom inside a range is found in a few tries.</summary>
    public static DyadicCell? AtBottom(SplitMix64 random, PoseBox box, Func<double[], double> function, int tries)
    {
        for (; tries > 0; tries--)
            if (AtBottom(random, box, function) is { } cell) return cell;
        return null;
    }

    /// <summary>The values of a cell's lowest and highest corner.</summary>
    public static (double[] Low, double[] High) Corners(PoseBox box, in DyadicCell cell)
    {
        double[] low = new double[box.Dimensions], high = new double[box.Dimensions];
        box.Values(cell.Low, low);
        box.Values(cell.Corner((1 << box.Dimensions) - 1, box.Dimensions), high);
        return (low, high);
    }

    private static DyadicCell? AtBottom(SplitMix64 random, PoseBox box, Func<double[], double> function)
    {
        const int Looks = 20;
        int d = box.Dimensions, wide = random.Below(d);
        double[] shares = [.. Enumerable.Range(0, d).Select(_ => random.Unit())];
        double At(double share)
        {
            var pose = new double[d];
            for (int k = 0; k < d; k++) pose[k] = box.Coordinates[k].Low + (box.Range(k) * (k == wide ? share : shares[k]));
            return function(pose);
        }

        double bottom = 0, least = double.PositiveInfinity;
        for (int i = 0; i <= Looks; i++)
            if (At(i / (double)Looks) is var value && value < least) (bottom, least) = (i / (double)Looks, value);
        if (bottom is 0 or 1) return null;
        for (double step = 0.25 / Looks; step > 1e-3; step /= 2)
            foreach (double next in (ReadOnlySpan<double>)[bottom - step, bottom + step])
                if (At(next) is var value && value < least) (bottom, least) = (next, value);
        int level = BestCentred(bottom);
        DyadicPose low = default, size = default;
        for (int k = 0; k < d; k++)
        {
            int own = k == wide ? level : 14;
            size = size.With(k, DyadicPose.Denominator >> own);
            low = low.With(k, (DyadicPose.Denominator >> own) * Math.Min((1 << own) - 1, (int)((k == wide ? bottom : shares[k]) * (1 << own))));
        }

        return new DyadicCell(low, size);
    }

    // Of cells of a half to a 32nd of the range, the one whose centre is nearest to the bottom for its size.
    private static int BestCentred(double share)
    {
        (int Level, double Off) best = (1, 1);
        for (int level = 1; level <= 5; level++)
        {
            double inCell = share * (1 << level), off = Math.Abs(inCell - Math.Floor(inCell) - 0.5);
            if (off < best.Off) best = (level, off);
        }

        return best.Level;
    }
}
