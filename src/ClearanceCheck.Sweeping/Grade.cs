namespace ClearanceCheck.Sweeping;

/// <summary>How well the bound of an extreme over the pose space is founded. Ordered: the weaker the larger.</summary>
public enum Grade
{
    /// <summary>No pose of this model passes the bound: closed-form curvature, or an interval enclosure of the solved motion.</summary>
    Proven,

    /// <summary>The curvature was read from the solver at the nodes of a block and doubled; no proof could be had there.</summary>
    Checked,

    /// <summary>Only sampled, with a stated allowance.</summary>
    Sampled,
}
