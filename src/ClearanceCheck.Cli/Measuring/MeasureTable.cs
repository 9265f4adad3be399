using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>Measurements as text for people.</summary>
internal static class MeasureTable
{
    public static string Write(Quantity quantity, ImmutableArray<MeasuredSubject> measured, PoseSet over)
    {
        var text = new StringBuilder($"{char.ToUpperInvariant(quantity.Name[0])}{quantity.Name[1..]}: {quantity.Meaning}{(over == PoseSet.AllPoses ? "" : $"; looked at {PoseSetWords.Where(over)}")}.\n");
        if (measured.IsEmpty) text.Append("There is nothing on this vehicle that it could be asked of.\n");
        foreach (MeasuredSubject subject in measured) Append(text, quantity, subject);
        return text.ToString();
    }

    private static void Append(StringBuilder text, Quantity quantity, MeasuredSubject subject)
    {
        string unit = QuantityUnitText.Of(quantity.Unit);
        string names = VisibleText.Typed(subject.First.Name) + (subject.Second is null ? "" : $" and {VisibleText.Typed(subject.Second.Name)}");
        text.Append($"\n{names}\n");
        if (subject.Value is not { } value)
        {
            text.Append($"  not known: {VisibleText.Sentence(subject.NotEvaluated)} ({subject.Answer})\n");
            return;
        }

        text.Append($"  {NumberFormat.Fixed(value, 2)} {unit}{Touching(quantity, value)}");
        if (subject.Worst is { } worst)
        {
            string side = quantity.IsWorstWhenLeast ? "less" : "more";
            string spent = worst.BudgetSpent ? "; the search ended early" : "";
            text.Append($" give or take {Figures.GiveOrTake(GiveOrTake.Of(worst), unit)}; never {side} than {NumberFormat.UpTo(worst.Bound, 3)} {unit} ({Founded(worst.Grade)}{spent})");
        }

        text.Append('\n');
        if (!subject.Pose.IsEmpty) text.Append($"  in the pose {string.Join(", ", subject.Pose.Select(c => $"{c.Name} {NumberFormat.UpTo(c.Value, 1)} {c.Unit}"))}\n");
        if (subject.Answer == "stopped") text.Append($"  the axle can't get there: {Stops(subject)} ends the travel before\n");
        else if (!subject.Stops.IsEmpty) text.Append($"  where the travel is ended by {Stops(subject)}\n");
    }

    private static string Stops(MeasuredSubject subject) => string.Join("; ", subject.Stops.Select(VisibleText.Typed));

    private static string Touching(Quantity quantity, double value) => quantity.Id == "gap" && value < 0 ? " (they overlap)" : "";

    private static string Founded(Grade grade) => grade switch
    {
        Grade.Proven => "proven for the model",
        Grade.Checked => "checked, not proven",
        _ => "only sampled",
    };
}
