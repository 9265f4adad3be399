namespace ClearanceCheck.Units;

/// <summary>A unit in which a length may be typed.</summary>
public enum LengthUnit
{
    /// <summary>mm</summary>
    Millimetre,

    /// <summary>cm</summary>
    Centimetre,

    /// <summary>m</summary>
    Metre,

    /// <summary>in, 25.4 mm exactly</summary>
    Inch,

    /// <summary>ft, 12 in</summary>
    Foot,
}
