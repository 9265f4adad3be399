using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Two points of a layout that give a line together: a kingpin, a pitman arm's shaft, the pivots of an arm. Too near to each other they give none.</summary>
internal static class LineEnds
{
    private static readonly ImmutableArray<(string First, string Second)> Endings = [("-lower", "-upper"), ("-pivot", "-axis"), ("-front", "-rear")];

    private static readonly ImmutableArray<(string First, string Second)> Whole =
    [
        ("beam-pivot-of-left", "radius-arm-left-pivot"),
        ("beam-pivot-of-right", "radius-arm-right-pivot"),
        ("tie-rod-left-inner", "tie-rod-right-inner"),
    ];

    /// <summary>True when all lines have a direction; said at the second point where one has none. A mirror image is as good as its source.</summary>
    public static bool AreApart(string axle, IReadOnlyDictionary<string, MeasuredPoint> points, VehicleDraft draft)
    {
        bool sound = true;
        ImmutableSortedDictionary<string, SourceSpan> places = draft.Places;
        foreach ((string name, MeasuredPoint point) in points)
        {
            if (Partner(name, points) is not { } other || !places.TryGetValue($"axles/{axle}/points/{other}", out SourceSpan typed)) continue;
            Vector3d line = draft.At(points[other]) - draft.At(point);
            // Left and right of the steering go by which end is up.
            bool upsideDown = line.Z < 0 && IsUpward(other);
            if (line.Length >= TurnedForm.LeastAxisMm && !upsideDown) continue;
            if (upsideDown) FileMessages.UpsideDown(draft.Diagnostics, typed, name, other);
            else FileMessages.ShortLine(draft.Diagnostics, typed, name, other, line.Length, TurnedForm.LeastAxisMm);
            sound = false;
        }

        return sound;
    }

    private static bool IsUpward(string second) => second.EndsWith("-upper", StringComparison.Ordinal) || second.EndsWith("-axis", StringComparison.Ordinal);

    private static string? Partner(string name, IReadOnlyDictionary<string, MeasuredPoint> points)
    {
        foreach ((string first, string second) in Whole)
            if (name == first && points.ContainsKey(second)) return second;
        foreach ((string first, string second) in Endings)
            if (name.EndsWith(first, StringComparison.Ordinal) && points.ContainsKey(name[..^first.Length] + second)) return name[..^first.Length] + second;
        return null;
    }
}
