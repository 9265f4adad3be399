namespace ClearanceCheck.Quantities;

/// <summary>The unit a quantity and its limits are written in.</summary>
public enum QuantityUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Percent.</summary>
    Percent,

    /// <summary>Degrees of an angle.</summary>
    Degree,
}
