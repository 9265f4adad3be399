namespace ClearanceCheck.Vehicles;

/// <summary>How a shaft is joined at an end.</summary>
public enum ShaftJointKind
{
    /// <summary>One cardan joint: it turns the shaft unevenly, twice a turn.</summary>
    Single,

    /// <summary>Two cardan joints with a centring device between them: each bends by half and the unevenness cancels.</summary>
    DoubleCardan,

    /// <summary>A joint that passes on an even turn at any angle.</summary>
    ConstantVelocity,
}
