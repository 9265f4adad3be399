using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Inspecting.Judging;

/// <summary>How much a failed value lacks, in the size of the change.</summary>
internal static class Remedies
{
    // A search that ran its course ends this near to its bound; one that was cut short has a bound that says nothing of the remedy.
    private const double SearchToleranceMm = 1;

    /// <summary>What a failed value lacks with its give or take counted, in the quantity's unit; zero where nothing is known.</summary>
    public static double Lacks(Finding finding) => finding is { Evidence: { } evidence, Limit.AtLeast: { } limit }
        ? limit + Guard(finding.Limit.Floor, limit, evidence) - Math.Min(evidence.Value, Math.Max(evidence.Bound, evidence.Value - SearchToleranceMm))
        : 0;

    // Where the value alone decides, only the floor has to hold with the give or take.
    private static double Guard(double? floor, double limit, Evidence evidence) => floor is { } least ? Math.Max(0, least + evidence.GiveOrTake - limit) : evidence.GiveOrTake;

    /// <summary>The change that would meet the limit with its give or take: "needs 14 mm (9/16 in) more."</summary>
    public static string Needed(Finding finding)
    {
        double lacks = Lacks(finding);
        if (finding.Evidence is not { } evidence || lacks <= 0) return "";
        if (finding.Quantity.Id == "hose-slack") return Hose(evidence, lacks);
        if (finding.Quantity.Unit != "mm") return "";
        return $"needs {(evidence.Value < 0 ? "at least " : "")}{Words.Length(Math.Ceiling(lacks))} more, its give or take counted.";
    }

    // The chord in the worst pose is known from the witness, so a share of it is a length of hose.
    private static string Hose(Evidence evidence, double lacksPercent)
    {
        double chord = (evidence.WitnessSecond - evidence.WitnessFirst).Length;
        return $"needs a free length {Words.Length(Math.Ceiling(chord * lacksPercent / 100))} longer, its give or take counted.";
    }
}
