using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>How much a failed value lacks, in the size of the change.</summary>
internal static class Remedies
{
    /// <summary>The change that would meet the limit with its give or take: "needs 14 mm (9/16 in) more."</summary>
    public static string Needed(Finding finding)
    {
        if (finding.Evidence is not { } evidence || finding.Limit.AtLeast is not { } limit) return "";
        double lacks = limit + evidence.GiveOrTake - Math.Min(evidence.Bound, evidence.Value);
        if (finding.Quantity.Id == "hose-slack") return Hose(evidence, lacks);
        return $"needs {Words.Length(Math.Ceiling(lacks))} more, its give or take counted.";
    }

    // The chord in the worst pose is known from the witness, so a share of it is a length of hose.
    private static string Hose(Evidence evidence, double lacksPercent)
    {
        double chord = (evidence.WitnessSecond - evidence.WitnessFirst).Length;
        return $"needs a free length {Words.Length(Math.Ceiling(chord * lacksPercent / 100))} longer, its give or take counted.";
    }
}
