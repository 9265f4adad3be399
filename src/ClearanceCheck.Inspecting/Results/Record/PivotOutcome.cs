namespace ClearanceCheck.Inspecting.Results.Record;

/// <summary>How a bushed pivot was tightened.</summary>
public enum PivotOutcome
{
    AtRideHeight,

    /// <summary>While the axle hung: the rubber is twisted at ride height.</summary>
    Hanging,

    /// <summary>Nobody wrote that it was tightened.</summary>
    Open,
}
