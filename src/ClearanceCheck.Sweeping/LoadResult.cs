namespace ClearanceCheck.Sweeping;

/// <summary>What is known of a cell.</summary>
internal enum LoadResult
{
    /// <summary>Corners, centre, curvature and stops.</summary>
    Loaded,

    /// <summary>Proved: no pose of the cell can be reached.</summary>
    OutOfReach,

    /// <summary>A pose or a curvature is missing.</summary>
    Unsolved,
}
