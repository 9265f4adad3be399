
namespace ClearanceCheck.Quantities.Gaps;

/// <summary>The gap of two parts from the gaps of their members.</summary>
internal static class MemberMeasurements
{
    /// <summary>The least of all, with every place within reach of it.</summary>
    public static Measurement Merged(IReadOnlyList<Measurement> members, double reachMm)
    {
        if (members.Count == 1) return members[0];
        if (members.FirstOrDefault(m => m.NotEvaluated is not null) is { } unknown) return unknown;
        double least = members.Min(m => m.Value);
        return new Measurement
        {
            Value = least,
            Bound = members.Min(m => m.Bound),
            Grade = members.Max(m => m.Grade),
            Places = [.. members.SelectMany(m => m.Places).Where(p => p.Value <= least + reachMm).OrderBy(p => p.Value)],
            Cells = members.Sum(m => m.Cells),
            RefusedAtRoot = members.All(m => m.RefusedAtRoot),
            BudgetSpent = members.Any(m => m.BudgetSpent),
            Module = members.Select(m => m.Module).FirstOrDefault(m => m is not null),
        };
    }
}
