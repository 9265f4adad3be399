namespace ClearanceCheck.Units;

/// <summary>What it takes to twist something, held in newton metres for a radian.</summary>
public readonly record struct TurningStiffness
{
    private const double DegreesPerRadian = 180 / Math.PI;

    private readonly double newtonMetresPerRadian;

    private TurningStiffness(double newtonMetresPerRadian) => this.newtonMetresPerRadian = newtonMetresPerRadian;

    /// <summary>The stiffness in Nm/rad.</summary>
    public double NewtonMetresPerRadian => newtonMetresPerRadian;

    /// <summary>The stiffness in N mm/rad.</summary>
    public double NewtonMillimetresPerRadian => newtonMetresPerRadian * 1000;

    /// <summary>Makes a stiffness from Nm/rad.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static TurningStiffness FromNewtonMetresPerRadian(double value) => new(Finite.OrThrow(value, nameof(value)));

    /// <summary>Makes a stiffness from Nm/deg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static TurningStiffness FromNewtonMetresPerDegree(double value) => new(Finite.OrThrow(value, nameof(value)) * DegreesPerRadian);

    /// <summary>Nm/rad, for logs and failed tests.</summary>
    public override string ToString() => NumberFormat.UpTo(newtonMetresPerRadian, 9) + " Nm/rad";
}
