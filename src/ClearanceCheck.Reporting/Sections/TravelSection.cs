using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Units;
using Scriban.Runtime;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>Where the wheels of each axle can go, what ends it, and how wheels, axle, shocks, shafts and links stand there.</summary>
public sealed class TravelSection : ReportSection
{
    private static readonly ImmutableArray<string> PathsShown = ["both-down", "both-up", "left-up-right-down", "left-down-right-up", "steer-left", "steer-right"];

    public override string Name => "travel";

    public override string Title => "Where the wheels can go";

    public override ScriptObject? View(ReportContext context) => context.Result.Travel.IsEmpty
        ? null
        : new ScriptObject { ["axles"] = new ScriptArray(context.Result.Travel.Select(t => Axle(t, context.Result.Reach))) };

    private static ScriptObject Axle(TravelTable table, ImmutableArray<ReachCard> reach)
    {
        bool isSteered = table.Columns.Any(c => c.Id == "steer");
        return new ScriptObject
        {
            ["name"] = Capital(VisibleText.Typed(table.Axle)),
            ["contradictions"] = new ScriptArray(table.Rows.Take(1).SelectMany(r => r.Passed).Select(Passed)),
            ["is_steered"] = isSteered,
            ["rows"] = new ScriptArray(table.Rows.Select(r => Row(table, r))),
            ["angles"] = Numbers(table, table.Columns.Where(c => IsAngle(c.Id, isSteered))),
            ["parts"] = Numbers(table, table.Columns.Where(c => !IsOfWheels(c.Id))),
            ["paths"] = new ScriptArray(table.Paths.Where(p => PathsShown.Contains(p.Way)).Select(Path)),
            ["farthest"] = new ScriptArray(reach.Where(r => r.Coordinate.StartsWith(table.Axle + ".", StringComparison.Ordinal) && GoesFurther(table, r)).Select(Farthest)),
        };
    }

    private static ScriptObject Row(TravelTable table, TravelRow row) => new()
    {
        ["label"] = Capital(VisibleText.Typed(row.Label)),
        ["left"] = Wheel(table, row, "left"),
        ["right"] = Wheel(table, row, "right"),
        ["steer"] = Value(table, row, "steer") is { } steer ? Steering(steer) : "not known",
        ["state"] = row.Answer,
        ["passed"] = new ScriptArray(row.Passed.Select(Passed)),
        ["ends"] = new ScriptArray(row.EndedBy.Select(e => VisibleText.Typed(e.Words)).Distinct()),
    };

    private static ScriptObject Passed(TravelPassed passed) => new()
    {
        ["stop"] = VisibleText.Typed(passed.Words),
        ["beyond"] = Figures.Plain(passed.BeyondMm, "mm"),
    };

    // Hub to fender where it was read, and the travel beside it.
    private static ScriptObject Wheel(TravelTable table, TravelRow row, string side)
    {
        double? travel = Value(table, row, side + ".travel"), height = Value(table, row, side + ".hub-to-fender");
        return new ScriptObject
        {
            ["main"] = height is { } read ? Figures.Brief(read, "mm") : travel is { } gone ? Travel(gone) : "not known",
            ["lines"] = height is { } tape && travel is { } also
                ? new ScriptArray { LengthFormat.Inches(Length.FromMillimetres(tape)), Travel(also) }
                : [],
        };
    }

    private static string Travel(double mm)
    {
        double whole = Math.Round(mm, MidpointRounding.AwayFromZero);
        return whole == 0 ? "ride height" : $"{Figures.Brief(Math.Abs(whole), "mm")} {(whole > 0 ? "up" : "down")}";
    }

    private static string Steering(double degrees)
    {
        string shown = Figures.Brief(Math.Abs(degrees), "deg");
        return shown == "0 deg" ? "straight ahead" : $"{shown} {(degrees > 0 ? "left" : "right")}";
    }

    private static ScriptObject? Numbers(TravelTable table, IEnumerable<TravelColumn> chosen)
    {
        ImmutableArray<TravelColumn> columns = [.. chosen];
        if (columns.IsEmpty) return null;
        return new ScriptObject
        {
            ["headings"] = new ScriptArray(columns.Select(c => $"{Capital(VisibleText.Typed(c.Label))}, {c.Unit}")),
            ["rows"] = new ScriptArray(table.Rows.Select(r => new ScriptObject
            {
                ["label"] = Capital(VisibleText.Typed(r.Label)),
                ["cells"] = new ScriptArray(columns.Select(c => Value(table, r, c.Id) is { } value ? Figures.Cell(value, c.Unit) : "-")),
            })),
        };
    }

    private static ScriptObject Path(TravelPath path) => new()
    {
        ["label"] = Capital(VisibleText.Typed(path.Label)),
        ["no_stop"] = path.EndsWithoutStop ? Figures.Plain(path.EndOfRange, path.Unit) : "",
        ["met"] = new ScriptArray(path.Met.Select(m => new ScriptObject
        {
            ["stop"] = VisibleText.Typed(m.Words),
            ["is_passed"] = m.BeyondAtRideMm > 0,
            ["at"] = m.BeyondAtRideMm > 0 ? Figures.Plain(m.BeyondAtRideMm, "mm") : Figures.Plain(m.At, path.Unit),
        })),
    };

    // The rows' ends need not be told twice.
    private static bool GoesFurther(TravelTable table, ReachCard card)
    {
        string coordinate = card.Coordinate[(table.Axle.Length + 1)..];
        double[] told = [.. table.Rows.Select(r => Value(table, r, card.Unit == "mm" ? coordinate + ".travel" : coordinate)).OfType<double>()];
        return told.Length == 0 || card.Lowest < told.Min() - 1 || card.Highest > told.Max() + 1;
    }

    private static ScriptObject Farthest(ReachCard card) => new()
    {
        ["label"] = Capital(VisibleText.Typed(card.Label)),
        ["lowest"] = card.Unit == "mm" ? Travel(card.Lowest) : Steering(card.Lowest),
        ["highest"] = card.Unit == "mm" ? Travel(card.Highest) : Steering(card.Highest),
        ["ends_lowest"] = VisibleText.Typed(card.EndsLowest),
        ["ends_highest"] = VisibleText.Typed(card.EndsHighest),
    };

    private static double? Value(TravelTable table, TravelRow row, string id)
    {
        for (int i = 0; i < table.Columns.Length; i++)
            if (table.Columns[i].Id == id) return row.Values[i];
        return null;
    }

    private static bool IsOfWheels(string id) => id == "steer" || id.StartsWith("left.", StringComparison.Ordinal) || id.StartsWith("right.", StringComparison.Ordinal) || id.StartsWith("axle.", StringComparison.Ordinal);

    // Where nothing is steered, a wheel's steer angle says again what its toe says.
    private static bool IsAngle(string id, bool isSteered) =>
        IsOfWheels(id) && id != "steer" && !id.EndsWith(".travel", StringComparison.Ordinal) && !id.EndsWith(".hub-to-fender", StringComparison.Ordinal)
        && (isSteered || !id.EndsWith(".steer", StringComparison.Ordinal));

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
