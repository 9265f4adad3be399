namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What has an expected thing: the vehicle, each axle, or each body that wheels are bolted to.</summary>
public enum ExpectedFor
{
    Vehicle,
    Axle,

    /// <summary>One for a solid axle without knuckles, two else.</summary>
    WheelBody,
}
