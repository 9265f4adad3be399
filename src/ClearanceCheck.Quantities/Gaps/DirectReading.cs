namespace ClearanceCheck.Quantities.Gaps;

/// <summary>A gap that was read directly, beside what the model makes of it.</summary>
/// <param name="Id">Its id in the file.</param>
/// <param name="State">The state in which it was read.</param>
/// <param name="MeasuredMm">The gap as read.</param>
/// <param name="StandardUncertaintyMm">Of the reading alone.</param>
public sealed record DirectReading(string Id, string State, double MeasuredMm, double StandardUncertaintyMm)
{
    /// <summary>The model's gap in the state's pose; null where a part has no shape.</summary>
    public double? ComputedMm { get; init; }

    /// <summary>Measured less computed; null where nothing was computed.</summary>
    public double? DeltaMm => MeasuredMm - ComputedMm;

    /// <summary>The two differ by more than both give-or-takes explain: one of them is wrong.</summary>
    public bool Disagrees { get; init; }

    /// <summary>The value and its bound come from this reading.</summary>
    public bool Counts { get; init; }

    /// <summary>The most that the two places can move against each other, no pose more; null where the change was computed.</summary>
    public double? TravelMm { get; init; }

    /// <summary>True when it was read between these two parts, false when to a body that one of them is on.</summary>
    public bool IsOfParts { get; init; } = true;

    /// <summary>Why it could not be used; null when it could.</summary>
    public string? NotUsed { get; init; }
}
