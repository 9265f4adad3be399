namespace ClearanceCheck.Units;

/// <summary>What it takes to shorten or shift something, held in newtons for a millimetre.</summary>
public readonly record struct Stiffness
{
    private readonly double newtonsPerMillimetre;

    private Stiffness(double newtonsPerMillimetre) => this.newtonsPerMillimetre = newtonsPerMillimetre;

    /// <summary>The stiffness in N/mm.</summary>
    public double NewtonsPerMillimetre => newtonsPerMillimetre;

    /// <summary>Makes a stiffness from N/mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Stiffness FromNewtonsPerMillimetre(double value) => new(Finite.OrThrow(value, nameof(value)));

    /// <summary>N/mm, for logs and failed tests.</summary>
    public override string ToString() => NumberFormat.UpTo(newtonsPerMillimetre, 9) + " N/mm";
}
