namespace ClearanceCheck.Rules.Checklists;

/// <summary>The closed words of items and expectations.</summary>
public static class ChecklistWords
{
    public const string BeforeFirstDrive = "before-first-drive", AfterFirstDrive = "after-first-drive";

    /// <summary>What an item may ask for beside a yes.</summary>
    public const string Ok = "ok", Value = "value", Mark = "mark", Initials = "initials";

    /// <summary>The families of items, in the order of the checklist.</summary>
    public static IReadOnlyList<string> Families { get; } =
    [
        "brakes", "steering", "wheels", "suspension", "tightening", "driveline", "exhaust", "fuel", "bodywork", "wiring-and-sensors", "road-test", "law",
    ];
}
