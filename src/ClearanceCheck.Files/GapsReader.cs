using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.States;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>gaps</c>: gaps between two parts that were read directly.</summary>
internal static class GapsReader
{
    private static readonly LengthRange Gap = Sizes.Range(0, 2000, "a gap between two parts");

    private static readonly ImmutableArray<string> Directions = ["up", "down", "forward", "rearward", "left", "right"];

    private static readonly Dictionary<string, GapTool> Tools = new(StringComparer.Ordinal)
    {
        ["tape"] = GapTool.Tape,
        ["feeler"] = GapTool.Feeler,
        ["clay"] = GapTool.Clay,
        ["drill"] = GapTool.Drill,
    };

    /// <summary>Notes whom gaps were read between, before the parts are read; faults are told when the gaps are.</summary>
    public static void FindNames(MappingReader reader, VehicleDraft draft)
    {
        if (reader.Node.Find("gaps")?.Value is not MappingNode gaps) return;
        foreach (MappingEntry gap in gaps.Entries)
            if (gap.Value is MappingNode one && one.Find("between")?.Value is SequenceNode sides)
                draft.NamedByGaps.UnionWith(sides.Items.OfType<ScalarNode>().Select(s => s.Text));
    }

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        foreach ((Placed<string> id, Field value) in reader.Optional("gaps").Entries() ?? [])
            if (value.Mapping(r => ReadGap(r, id, draft)) is { } gap) draft.DirectGaps.Add(gap);
    }

    private static DirectGap? ReadGap(MappingReader reader, Placed<string> id, VehicleDraft draft)
    {
        Field betweenField = reader.Required("between", "the two parts it was read between");
        Field stateField = reader.Optional("in");
        Placed<string>? state = StateWord.Read(stateField, draft);
        Placed<LengthReading>? reading = reader.Required("is", "the gap").Length(Gap);
        Placed<GapTool>? tool = reader.Required("how", "what it was read with: tape, feeler, clay or drill").Choice(Tools);
        Field closesField = reader.Optional("closes");
        Placed<string>? closes = closesField.Word(Directions);
        double? own = Within.Read(reader);
        string measuredIn = state?.Value ?? draft.States.MeasuredIn;
        string? first = null, second = null;
        if (betweenField.Items(2) is [var one, var other])
        {
            first = ReadSide(one, measuredIn, state?.Span ?? id.Span, draft);
            second = ReadSide(other, measuredIn, state?.Span ?? id.Span, draft);
        }

        if (first is not null && first == second) FileMessages.GapOfOne(betweenField, first);
        if (first is null || second is null || reading is null || tool is null || (stateField.IsPresent && state is null) || (closesField.IsPresent && closes is null)) return null;
        MeasuredLength length = draft.Length($"gaps/{id.Value}", reading, Half(own, tool.Value));
        return new DirectGap(id.Value, [first, second], measuredIn, length, tool.Value, closes?.Value);
    }

    // A part, or a whole body where what is on it was not described part by part.
    private static string? ReadSide(Field field, string state, SourceSpan place, VehicleDraft draft)
    {
        if (field.Node is ScalarNode { Text: var typed })
        {
            if (draft.Sides.IsMirrored(typed))
            {
                FileMessages.GapOfMirrored(field, typed);
                return null;
            }

            // Nobody knows what a faulty part or axle would have been.
            if (draft.Places.ContainsKey($"parts/{typed}") && !draft.Parts.Exists(p => p.Id == typed)) return null;
            if (draft.FaultyAxles.Exists(axle => typed.StartsWith(axle, StringComparison.Ordinal))) return null;
        }

        if (field.Word([.. draft.Parts.Select(p => p.Id), .. draft.Bodies])?.Value is not { } named) return null;
        Part? part = draft.Parts.Find(p => p.Id == named);
        IEnumerable<string> bodies = part is null ? [named] : part.Form.Ends.IsEmpty ? [part.Body] : part.Form.Ends.Select(e => e.Body);
        bool tied = true;
        foreach (Axle axle in bodies.Select(draft.AxleOf).OfType<Axle>().Distinct()) tied &= axle.MeasuredIn == state || AxleTies.IsTied(axle.Name, state, place, draft);
        return tied ? named : null;
    }

    private static Within Half(double? own, GapTool tool) => tool switch
    {
        GapTool.Tape => Within.For(own, null, Defaults.TapedGapMm, "a gap by tape"),
        GapTool.Clay => Within.For(own, null, Defaults.ClayMm, "a gap by clay"),
        _ => Within.For(own, null, Defaults.FeelerMm, "a gap by feeler gauge or drill shank"),
    };
}
