namespace ClearanceCheck.Vehicles;

/// <summary>Which properties describe a part.</summary>
public enum PartFormKind
{
    /// <summary>A path and an outside diameter.</summary>
    Chain,

    /// <summary>Two ends, a free length and an outside diameter.</summary>
    Hose,

    /// <summary>Two ends, a closed and an open length.</summary>
    Shock,

    /// <summary>A place on the frame, a place on the axle, a height and a material.</summary>
    BumpStop,
}
