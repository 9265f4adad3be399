using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>Which extreme each side of a limit is held against, and which side decides.</summary>
internal static class Sides
{
    /// <summary>The extreme that bounds the side of a limit.</summary>
    /// <param name="side">A limit with one side.</param>
    /// <exception cref="InvalidOperationException">The quantity bounds the other side only: the rule's reader should have refused it.</exception>
    public static Measurement Bounding(RuleLimit side, Quantity quantity, Measurement measured)
    {
        if (measured.NotEvaluated is not null || quantity.IsWorstWhenLeast == side.AtLeast is not null) return measured;
        return measured.OtherSide ?? throw new InvalidOperationException($"{quantity.Id} bounds one side only.");
    }

    /// <summary>The side with the gravest verdict; of equal ones that which is nearer to being missed.</summary>
    public static (RuleLimit Side, Measurement Measured, Verdict Verdict) Deciding(
        RuleLimit limit, Quantity quantity, Measurement measured, Func<RuleLimit, Measurement, Verdict> judge) => limit.Sides
        .Select(side => (Side: side, Measured: Bounding(side, quantity, measured)))
        .Select(s => (s.Side, s.Measured, Verdict: judge(s.Side, s.Measured)))
        .OrderBy(s => s.Verdict switch { Verdict.NotEvaluated => 0, Verdict.Fails => 1, Verdict.Undecided => 2, _ => 3 })
        .ThenBy(s => s.Verdict == Verdict.NotEvaluated ? 0 : Margin(s.Side, s.Measured))
        .First();

    private static double Margin(RuleLimit side, Measurement measured) => side.AtLeast is { } least ? measured.Value - least : side.Number - measured.Value;
}
