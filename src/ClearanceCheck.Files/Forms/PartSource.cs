using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A part of the file while its form is read.</summary>
/// <param name="Within">The half-width typed at the part, mm.</param>
internal sealed record PartSource(MappingReader Reader, PartKind Kind, string Id, double? Within, VehicleDraft Draft)
{
    /// <summary>The path of something of the part in the model.</summary>
    public string Path(string key) => $"parts/{Id}/{key}";

    /// <summary>Lists something that is taken for granted about the part.</summary>
    public void Assume(string text) => Draft.Assume($"parts/{Id}", text);

    /// <summary>The half-width of a point on something that can be touched.</summary>
    public Within Surface(string target) => Files.Within.For(Within, Draft.FileWithin, Defaults.SurfaceMm, target);

    /// <summary>The half-width of the middle of a joint.</summary>
    public Within Joint() => Files.Within.For(Within, Draft.FileWithin, Defaults.JointCentreMm, "a hidden joint centre");

    /// <summary>The half-width of a length taken with a tape.</summary>
    public Within Tape() => Files.Within.For(Within, Draft.FileWithin, Defaults.TapeMm, "a tape reading");

    /// <summary>Takes a diameter or thickness into the parameter vector.</summary>
    public MeasuredLength Size(string key, Placed<LengthReading> typed) => Draft.Length(Path(key), typed, Sizes.Default, widen: false);

    /// <summary>Takes points into the parameter vector, numbered from 1.</summary>
    public ImmutableArray<MeasuredPoint> Points(string key, IReadOnlyList<Placed<LengthTriple>> typed, Within within) =>
        [.. typed.Select((point, i) => Draft.Point(Path($"{key}/{i + 1}"), point, within))];
}
