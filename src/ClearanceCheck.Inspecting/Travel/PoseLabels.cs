namespace ClearanceCheck.Inspecting.Travel;

/// <summary>Named poses and straight paths in a mechanic's words.</summary>
internal static class PoseLabels
{
    private const string LockLeft = "-lock-left";
    private const string LockRight = "-lock-right";

    /// <summary>A pose: "both wheels hang, steered hard left".</summary>
    public static string Pose(string name)
    {
        if (name.EndsWith(LockLeft, StringComparison.Ordinal)) return Pose(name[..^LockLeft.Length]) + ", steered hard left";
        if (name.EndsWith(LockRight, StringComparison.Ordinal)) return Pose(name[..^LockRight.Length]) + ", steered hard right";
        return name switch
        {
            "ride-height" => "ride height",
            "lock-left" => "ride height, steered hard left",
            "lock-right" => "ride height, steered hard right",
            "full-droop" => "both wheels hang",
            "left-droop" => "left hangs, right at ride height",
            "right-droop" => "right hangs, left at ride height",
            "articulated-left-up" => "left up, right hangs",
            "articulated-right-up" => "right up, left hangs",
            "left-bump" => "left up, right at ride height",
            "right-bump" => "right up, left at ride height",
            "full-bump" => "both wheels up",
            _ => name.Replace('-', ' '),
        };
    }

    /// <summary>A path: "left wheel up, right down".</summary>
    public static string Path(string way) => way switch
    {
        "both-down" => "both wheels down",
        "both-up" => "both wheels up",
        "left-up-right-down" => "left wheel up, right down as much",
        "left-down-right-up" => "right wheel up, left down as much",
        "left-down" => "left wheel down alone",
        "right-down" => "right wheel down alone",
        "left-up" => "left wheel up alone",
        "right-up" => "right wheel up alone",
        "steer-left" => "steered to the left",
        "steer-right" => "steered to the right",
        _ => way.Replace('-', ' '),
    };
}
