namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>Random numbers that another program can repeat: the published SplitMix64 mixing of a counter.</summary>
internal sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    public ulong Next()
    {
        ulong z = state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    public double In(double low, double high) => low + ((high - low) * Unit());

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
            double squared = v.LengthSquared;
            if (squared > 0.01 && squared <= 1) return v * (1 / Math.Sqrt(squared));
        }
    }

    public RigidMotion Motion(double shiftMm) => new(Rotation.About(UnitVector(), In(-Math.PI, Math.PI)), Cube(shiftMm));
}
