namespace ClearanceCheck.Rules;

/// <summary>What a limit comes to for one part. A closed family.</summary>
public abstract record LimitForPart
{
    private LimitForPart()
    {
    }

    /// <summary>A limit with one or two sides.</summary>
    public sealed record Known(RuleLimit Limit) : LimitForPart;

    /// <summary>The part is smaller than the first step of the table: the rule asks nothing of it.</summary>
    public sealed record NotCovered(string Property, double Value, double First) : LimitForPart;

    /// <summary>The file does not say the property.</summary>
    public sealed record Missing(string Property) : LimitForPart;
}
