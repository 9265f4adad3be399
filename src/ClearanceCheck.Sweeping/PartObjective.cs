using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Sweeping.Views;

namespace ClearanceCheck.Sweeping;

/// <summary>An objective in a part of a system, which numbers its bodies otherwise.</summary>
/// <param name="whole">The objective in the whole's numbers.</param>
/// <param name="numbers">For each body of the part its number in the whole.</param>
internal sealed class PartObjective(ISweepObjective whole, ImmutableArray<int> numbers) : ISweepObjective
{
    private readonly SweptTrack[] tracks = [.. whole.Tracks.Select(t => t with { Body = numbers.IndexOf(t.Body) })];

    public int FrameBody { get; } = numbers.IndexOf(whole.FrameBody);

    public IReadOnlyList<SweptTrack> Tracks => tracks;

    public long Work => whole.Work;

    public ImmutableArray<OpenFeature> Root => whole.Root;

    public double Evaluate(ReadOnlySpan<RigidMotion> tracks, out Witness witness) => whole.Evaluate(tracks, out witness);

    public bool IsExact(double value) => whole.IsExact(value);

    public void Examine(CellGeometry cell, ImmutableArray<OpenFeature> open, double threshold, CellOutcome outcome) =>
        whole.Examine(cell, open, threshold, outcome);
}
