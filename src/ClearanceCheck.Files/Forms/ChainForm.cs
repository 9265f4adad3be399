using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A line, pipe or bar: the points of its middle line and an outside diameter.</summary>
internal static class ChainForm
{
    public static PartForm? Read(PartSource part)
    {
        Placed<LengthReading>? diameter = part.Reader.Required("outside-diameter", "its outside diameter").Length(Sizes.Diameter);
        ImmutableArray<MeasuredPoint>? path = ChainPathReader.Read(part);
        Field clips = part.Reader.Optional("clips");
        IReadOnlyList<int> held = clips.PositiveIntegers()?.Value ?? [];
        if (path is { } points && held.FirstOrDefault(n => n > points.Length) is > 0 and var beyond) FileMessages.ClipBeyondPath(clips, beyond, points.Length);
        if (diameter is null || path is null) return null;
        return new PartForm.Chain(path.Value, part.Size("outside-diameter", diameter), [.. held.Select(n => n - 1)]);
    }
}
