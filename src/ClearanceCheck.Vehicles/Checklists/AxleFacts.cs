using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What is known of an axle from its layout's points, for items and expectations to ask for.</summary>
public static class AxleFacts
{
    public const string Steered = "steered", Driven = "driven", LeafSprings = "leaf-springs", TrackBar = "track-bar", AntiRollBar = "anti-roll-bar", OneBody = "one-body", TwoBodies = "two-bodies";

    /// <summary>The word that an axle without a shaft is declared with behind its name: <c>absent: { front-driveshaft: ... }</c>.</summary>
    public const string ShaftRow = "driveshaft";

    public static ImmutableArray<string> All { get; } = [Steered, Driven, LeafSprings, TrackBar, AntiRollBar, OneBody, TwoBodies];

    /// <summary>The facts that hold. An axle counts as driven until the file says that it has no shaft, or that another one drives alone: a 4x4 has a shaft to each.</summary>
    /// <param name="drive">A word of <see cref="DriveWords"/>; null where the file does not say.</param>
    public static ImmutableSortedSet<string> Of(Axle axle, IEnumerable<Absence> absent, string? drive)
    {
        var facts = ImmutableSortedSet.CreateBuilder<string>(StringComparer.Ordinal);
        if (axle.Steering is not null) facts.Add(Steered);
        if (DriveWords.Drives(drive, axle.Name) && !absent.Any(a => a.Id == $"{axle.Name}-{ShaftRow}")) facts.Add(Driven);
        if (axle.Points.Keys.Any(p => p.StartsWith("spring-eye-", StringComparison.Ordinal))) facts.Add(LeafSprings);
        if (axle.Points.ContainsKey("track-bar-frame")) facts.Add(TrackBar);
        if (axle.Bar is not null) facts.Add(AntiRollBar);
        facts.Add(axle.Left.Body == axle.Right.Body ? OneBody : TwoBodies);
        return facts.ToImmutable();
    }
}
