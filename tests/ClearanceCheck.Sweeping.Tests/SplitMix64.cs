using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Tests;

/// <summary>The generator of the tests' random scenes: the same numbers on every machine.</summary>
internal sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    public ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    public double Unit() => (Next() >> 11) * (1.0 / (1L << 53));

    public double In(double low, double high) => low + ((high - low) * Unit());

    public int Below(int count) => (int)(Next() % (ulong)count);

    public Vector3d Cube(double half)
    {
        double x = In(-half, half), y = In(-half, half), z = In(-half, half);
        return new Vector3d(x, y, z);
    }

    public Vector3d UnitVector()
    {
        while (true)
        {
            Vector3d v = Cube(1);
            if (v.LengthSquared is > 0.01 and <= 1) return v / v.Length;
        }
    }
}
