namespace ClearanceCheck.Scans;

/// <summary>A direction along one of the file's own axes.</summary>
public enum ScanAxis
{
    /// <summary>+x</summary>
    PlusX,

    /// <summary>-x</summary>
    MinusX,

    /// <summary>+y</summary>
    PlusY,

    /// <summary>-y</summary>
    MinusY,

    /// <summary>+z</summary>
    PlusZ,

    /// <summary>-z</summary>
    MinusZ,
}
