namespace ClearanceCheck.Vehicles.Tires;

/// <summary>How the plies of a tire run, as its size says.</summary>
public enum TireConstruction
{
    /// <summary><c>R</c>.</summary>
    Radial,

    /// <summary><c>D</c>, <c>B</c> or a dash: bias and bias-belted plies.</summary>
    Bias,
}
