using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads the lengths of a layout that are no points, each by its own key: <c>clamp-length: 110 mm</c>.</summary>
internal static class FiguresReader
{
    /// <summary>The lengths by name; null where one is missing or faulty, which is said.</summary>
    public static ImmutableSortedDictionary<string, MeasuredLength>? Read(MappingReader reader, AxleLayout layout, string axle, double? within, VehicleDraft draft)
    {
        var figures = ImmutableSortedDictionary.CreateBuilder<string, MeasuredLength>(StringComparer.Ordinal);
        Within half = Within.For(within, draft.FileWithin, Defaults.FigureMm, "a length of an axle's layout");
        foreach (LayoutFigure figure in layout.Figures)
        {
            string path = $"axles/{axle}/{figure.Name}";
            Field field = figure.DefaultMm is null ? reader.Required(figure.Name, figure.Where) : reader.Optional(figure.Name);
            LengthRange range = Sizes.Range(figure.LowMm, figure.HighMm, figure.Where);
            if (field.Length(range) is { } typed) figures[figure.Name] = draft.Length(path, typed, half);
            else if (!field.IsPresent && figure.DefaultMm is { } usual) figures[figure.Name] = Assumed(path, figure, usual, draft);
        }

        return figures.Count == layout.Figures.Length ? figures.ToImmutable() : null;
    }

    private static MeasuredLength Assumed(string path, LayoutFigure figure, double usualMm, VehicleDraft draft)
    {
        draft.Assume(
            path,
            $"Not typed: {figure.Where}; taken as {NumberFormat.UpTo(usualMm, 1)} mm, {NumberFormat.UpTo(Defaults.AssumedFigureMm, 1)} mm each way (common practice, no source).");
        return draft.Computed(path, usualMm, Defaults.AssumedFigureMm, true);
    }
}
