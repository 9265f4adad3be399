namespace ClearanceCheck.Quantities;

/// <summary>What a measurement rests on.</summary>
public enum MeasurementBasis
{
    /// <summary>The measured points alone.</summary>
    Points,

    /// <summary>A gap that was read directly; the points say how it changes.</summary>
    Reading,

    /// <summary>A gap that was read directly, less the most that the two places can move against each other: no pose is known that comes that near.</summary>
    ReadingAndTravel,
}
