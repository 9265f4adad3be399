namespace ClearanceCheck.Inspecting.Results;

/// <summary>What a finding's value rests on.</summary>
public enum FindingBasis
{
    /// <summary>The measured points alone.</summary>
    Points,

    /// <summary>A gap that was read directly, and how the points say it changes.</summary>
    Reading,

    /// <summary>A gap that was read directly, less the most that the two places can move against each other.</summary>
    ReadingAndTravel,
}
