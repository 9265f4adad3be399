namespace ClearanceCheck.Vehicles;

/// <summary>What a gap was read with.</summary>
public enum GapTool
{
    /// <summary>A tape.</summary>
    Tape,

    /// <summary>A feeler gauge.</summary>
    Feeler,

    /// <summary>Clay that was pressed flat.</summary>
    Clay,

    /// <summary>The shank of a drill that just fits.</summary>
    Drill,
}
