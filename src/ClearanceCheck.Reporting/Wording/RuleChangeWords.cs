using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Wording;

/// <summary>What a shop's rules ask less than those below, in sentences.</summary>
public static class RuleChangeWords
{
    /// <summary>"Brake line too close to the exhaust: loosened, at least 40 mm instead of at least 50 mm. Because ... (R. Amsel, until 2031-12-31; lowland-garage 1.2.0, changes.yaml:6:3)".</summary>
    public static string Of(RuleChangeCard change)
    {
        string signed = string.Join(", ", new[] { change.By, change.Until is null ? null : $"until {change.Until}" }.OfType<string>());
        string where = $"{change.Layer}, {change.Place}";
        return $"{change.Title} ({change.Rule}): {What(change)}.{(change.Because is { } why ? $" Because: {why.TrimEnd('.')}." : "")} ({(signed.Length > 0 ? signed + "; " : "")}{where})";
    }

    /// <summary>What stands on top of a report whose rules could not all be loaded; empty when they could.</summary>
    public static string NotLoaded(int rules) => rules switch
    {
        0 => "",
        1 => "1 rule not loaded: what it would have found is not known.",
        _ => FormattableString.Invariant($"{rules} rules not loaded: what they would have found is not known."),
    };

    private static string What(RuleChangeCard change) => change.Kind switch
    {
        "loosened" => $"loosened, {string.Join("; ", change.What)}",
        "switched-off" => "switched off, not checked",
        _ => "the shop's change is past its last day, the rule below counts again",
    };
}
