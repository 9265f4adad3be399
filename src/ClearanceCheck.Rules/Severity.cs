namespace ClearanceCheck.Rules;

/// <summary>What a failed rule leads to. Words of ANSI Z535 and ISO 3864; the meanings are ours. Ordered: the graver the larger.</summary>
public enum Severity
{
    /// <summary>Wear, noise, cost, information.</summary>
    Notice,

    /// <summary>A breakdown or minor harm.</summary>
    Caution,

    /// <summary>Damage that leads to loss of brakes, steering or a wheel, or to fire.</summary>
    Warning,

    /// <summary>Loss of brakes, steering or a wheel, or fire.</summary>
    Danger,
}
