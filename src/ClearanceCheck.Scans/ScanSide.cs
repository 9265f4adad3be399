namespace ClearanceCheck.Scans;

/// <summary>Along what a scan's length is claimed, after it was turned into the vehicle frame.</summary>
public enum ScanSide
{
    /// <summary>Along x: fore and aft.</summary>
    X,

    /// <summary>Along y: across.</summary>
    Y,

    /// <summary>Along z: upright.</summary>
    Z,

    /// <summary>The longest of the three.</summary>
    Longest,
}
