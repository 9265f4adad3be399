namespace ClearanceCheck.Vehicles;

/// <summary>Which properties describe a part.</summary>
public enum PartFormKind
{
    /// <summary>A path and an outside diameter.</summary>
    Chain,

    /// <summary>An outline and a thickness.</summary>
    Plate,

    /// <summary>Two opposite corners.</summary>
    Box,

    /// <summary>An axis, a profile and, for what is hollow, a wall.</summary>
    Turned,

    /// <summary>A mesh file with its unit, axes and sizes.</summary>
    Scanned,

    /// <summary>Two ends, a free length and an outside diameter.</summary>
    Hose,

    /// <summary>Two ends and an outside diameter.</summary>
    Link,

    /// <summary>Two ends, a closed and an open length, and its tube and rod.</summary>
    Shock,

    /// <summary>Two ends, a tube and what slides in it.</summary>
    Shaft,

    /// <summary>Two seats, an outside diameter, a wire and a number of turns.</summary>
    Coil,

    /// <summary>A place on the frame, a place on the axle, a height and a material.</summary>
    BumpStop,

    /// <summary>Two ends and a length.</summary>
    LimitStrap,

    /// <summary>A bolt and its pad.</summary>
    SteeringStop,

    /// <summary>Nothing but a body: gaps to it were read directly.</summary>
    Unshaped,

    /// <summary>Comes from the axle, its wheel or its leaf springs, not from a part of the file.</summary>
    FromAxle,
}
