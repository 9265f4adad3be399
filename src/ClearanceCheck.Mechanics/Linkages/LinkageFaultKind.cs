namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What is wrong with a linkage.</summary>
public enum LinkageFaultKind
{
    /// <summary>A body can still move while all settings stand still: a link is missing. Names the bodies.</summary>
    Loose,

    /// <summary>A setting is already decided by the other joints: nothing would move. Names the setting.</summary>
    SettingWithoutFreedom,

    /// <summary>A rod of no length. Names the joint.</summary>
    NoLength,
}
