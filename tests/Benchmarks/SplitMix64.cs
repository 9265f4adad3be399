namespace ClearanceCheck.Benchmarks;

/// <summary>Numbers at random from a seed, the same on every system (Steele, Lea, Flood, Fast splittable pseudorandom number generators, 2014).</summary>
internal sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    /// <summary>A number from 0 to 1, one left out.</summary>
    public double Unit()
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    public double In(double least, double most) => least + ((most - least) * Unit());

    /// <summary>A point in a cube around zero.</summary>
    public Geometry.Vector3d Cube(double half) => new(In(-half, half), In(-half, half), In(-half, half));
}
