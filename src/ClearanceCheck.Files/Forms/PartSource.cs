using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A part of the file while its form is read.</summary>
/// <param name="Within">The half-width typed at the part, mm.</param>
/// <param name="State">The state typed at the part; null when none is.</param>
internal sealed record PartSource(MappingReader Reader, PartKind Kind, string Id, double? Within, Placed<string>? State, VehicleDraft Draft)
{
    /// <summary>The body that a part on one body is fixed to; null while it is not known, and for parts between two bodies.</summary>
    public string? Body { get; init; }

    /// <summary>The state in which the part was measured.</summary>
    public string MeasuredIn => State?.Value ?? Draft.States.MeasuredIn;

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
        [.. typed.Select((point, i) => Point($"{key}/{i + 1}", point, within, Body, null))];

    /// <summary>Takes a point into the parameter vector, with the state it was measured in.</summary>
    /// <param name="key">Its path below the part.</param>
    /// <param name="typed">The point as read.</param>
    /// <param name="within">Its half-width.</param>
    /// <param name="body">The body it rides on; null where that is not known.</param>
    /// <param name="state">A state typed at the point itself, which goes before the part's.</param>
    public MeasuredPoint Point(string key, Placed<LengthTriple> typed, Within within, string? body, Placed<string>? state)
    {
        MeasuredPoint point = Draft.Point(Path(key), typed, within);
        Stand(point, body, state, typed.Span);
        return point;
    }

    /// <summary>Notes the state in which a point was measured.</summary>
    public void Stand(MeasuredPoint point, string? body, Placed<string>? state, SourceSpan at)
    {
        Placed<string>? named = state ?? State;
        if (body is not null) Draft.Stated(point, body, named?.Value ?? Draft.States.MeasuredIn, named?.Span ?? at);
    }

    /// <summary>True when the part was measured as its axle's layout was, or does not move: what can't be turned with its body has to be; said when not.</summary>
    /// <param name="what">What can't be turned: "the edges of a box lie along the vehicle's axes".</param>
    public bool StandsAsItsAxle(string what)
    {
        if (Body is null || Draft.AxleOf(Body) is not { } axle || axle.MeasuredIn == MeasuredIn) return true;
        FileMessages.TurnedWithItsAxle(this, what, axle);
        return false;
    }
}
